package leat.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.trench.TrenchSegment;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.FlowTest;
import leat.model.water.Head;
import leat.model.water.Lateral;
import leat.model.water.Mains;
import leat.model.water.PipeRun;
import leat.model.water.Pump;
import leat.model.water.Rotor;
import leat.model.water.Source;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** Yards with one thing spoilt. */
final class Damage {

    private Damage() {}

    static Yard without(Yard yard, HeadId gone) {
        WaterSystem water = yard.water();
        List<Head> heads =
                water.heads().stream().filter(head -> !head.id().equals(gone)).toList();
        List<Zone> zones = water.zones().stream()
                .map(zone -> zone.withHeads(
                        zone.heads().stream().filter(head -> !head.equals(gone)).toList()))
                .toList();
        List<Lateral> laterals = new ArrayList<>();
        for (Lateral lateral : water.laterals()) {
            SortedMap<HeadId, PipeId> kept = new TreeMap<>(lateral.heads());
            kept.remove(gone);
            laterals.add(new Lateral(lateral.zone(), lateral.runs(), kept));
        }
        WaterSystem changed = new WaterSystem(
                water.sources(),
                water.backflows(),
                water.main(),
                water.manifolds(),
                heads,
                zones,
                laterals,
                water.bibs());
        Set<Id> left = Yard.plannable(changed, yard.power(), yard.trenches());
        return yard.changed(changed, yard.trenches(), yard.planned().only(left));
    }

    /** Every source with half its pressure, at rest and while it is drawn on. */
    static Yard halfThePressure(Yard yard) {
        WaterSystem water = yard.water();
        return yard.withWater(new WaterSystem(
                water.sources().stream().map(Damage::halved).toList(),
                water.backflows(),
                water.main(),
                water.manifolds(),
                water.heads(),
                water.zones(),
                water.laterals(),
                water.bibs()));
    }

    private static Source halved(Source source) {
        if (source instanceof Mains mains) {
            Optional<FlowTest> test = mains.flowTest().map(one -> new FlowTest(one.flow(), half(one.residual())));
            return new Mains(mains.id(), mains.at(), half(mains.staticPressure()), test, mains.meter());
        }
        Pump pump = (Pump) source;
        return new Pump(
                pump.id(),
                pump.at(),
                half(pump.shutOff()),
                pump.duty(),
                half(pump.dutyPressure()),
                pump.lift(),
                pump.meter());
    }

    private static Pressure half(Pressure pressure) {
        return pressure.times(0.5);
    }

    /** A run of a lateral in another size. */
    static Yard resized(Yard yard, PipeRun pipe, String size) {
        List<Lateral> laterals = yard.water().laterals().stream()
                .map(lateral -> new Lateral(
                        lateral.zone(),
                        lateral.runs().stream()
                                .map(run -> run.id().equals(pipe.id()) ? run.withSize(size) : run)
                                .toList(),
                        lateral.heads()))
                .toList();
        return yard.withWater(yard.water().withLaterals(laterals));
    }

    /** Each trench 100 mm deeper, with nothing else in it. */
    static Yard dugDeeper(Yard yard) {
        List<TrenchSegment> deeper = yard.trenches().stream()
                .map(one -> new TrenchSegment(
                        one.id(),
                        one.route(),
                        one.depth().plus(Length.millimetres(100)),
                        one.contents(),
                        one.byHand(),
                        one.phase()))
                .toList();
        return yard.changed(yard.water(), deeper, yard.planned());
    }

    /** Each month 5 °C hotter and with half the rain. */
    static Yard drierAndHotter(Yard yard) {
        Climate climate = yard.watering().climate().orElseThrow();
        List<ClimateMonth> months = climate.months().stream()
                .map(one -> new ClimateMonth(
                        one.month(),
                        one.lowC() + 5,
                        one.highC() + 5,
                        one.dewC(),
                        one.humidity(),
                        one.wind(),
                        one.sunshine(),
                        one.rain().map(rain -> rain.times(0.5))))
                .toList();
        return yard.withWatering(yard.watering()
                .withClimate(new Climate(climate.place(), climate.latitude(), climate.altitude(), months)));
    }

    static Yard moved(Yard yard, HeadId id, Point to) {
        List<Head> heads = yard.water().heads().stream()
                .map(head -> head.id().equals(id) ? movedRotor((Rotor) head, to) : head)
                .toList();
        return yard.withWater(yard.water().withHeads(heads));
    }

    private static Head movedRotor(Rotor head, Point to) {
        return new Rotor(head.id(), head.family(), to, head.arc(), head.radius());
    }
}
