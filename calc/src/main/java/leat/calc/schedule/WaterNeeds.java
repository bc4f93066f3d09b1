package leat.calc.schedule;

import java.time.Month;
import leat.calc.schedule.internal.Application;
import leat.calc.schedule.internal.SoilWater;
import leat.model.catalog.PlantKind;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.water.Climate;

/** The water balance of a zone's ground. */
final class WaterNeeds {

    private final Site site;
    private final Climate climate;

    WaterNeeds(Site site, Climate climate) {
        this.site = site;
        this.climate = climate;
    }

    /** Of an average day of the month, with its rain or in a week without. */
    WaterBalance of(ZoneGround ground, ReferenceMonth reference, boolean withRain) {
        Month month = reference.month();
        int days = month.length(false);
        PlantKind kind = site.catalog().watering().plant(ground.planting());
        Ratio coefficient =
                CropCoefficients.of(kind, ground.growing(), site.catalog().watering(), climate, month);
        double useMm = reference.aDay().inMillimetres() * coefficient.value();
        double availableMm = SoilWater.availableMm(
                ground.soil().availableWater().value(), 0, kind.root().metres());
        double heldMm = SoilWater.readilyAvailableMm(
                availableMm, SoilWater.depletionFraction(kind.depletion().value(), useMm));
        double rainMm = withRain
                ? climate.month(month)
                        .rain()
                        .map(rain -> SoilWater.effectiveRainMm(rain.inMillimetres(), useMm * days, heldMm))
                        .orElse(0.0)
                : 0;
        double netMm = Math.max(0, useMm - rainMm / days);
        double grossM = Application.grossM(
                netMm / 1000, Application.runTimeFactor(ground.evenness().value()));
        int interval = netMm > 0 ? SoilWater.intervalDays(heldMm, netMm) : days;
        return new WaterBalance(
                reference.aDay(),
                coefficient,
                Length.millimetres(useMm),
                Length.millimetres(heldMm),
                Length.millimetres(rainMm),
                Length.millimetres(netMm),
                new Length(grossM),
                Count.of(interval));
    }
}
