package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;
import leat.model.plan.Site;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import leat.model.water.PipeRun;
import leat.model.water.Source;

/**
 * The greatest pressure in each pipe against its rating: at rest for the main, which is always under pressure, and while
 * the zone runs for its lateral, which a valve keeps from the pressure at rest.
 */
final class StandingPressure {

    private final Site site;
    private final SortedMap<ZoneId, ZoneRun> zones;

    StandingPressure(Site site, SortedMap<ZoneId, ZoneRun> zones) {
        this.site = site;
        this.zones = zones;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        var feeds = site.yard().water().feeds();
        for (PipeRun run : site.yard().water().main().runs()) {
            feeds.sourceOf(run.id()).ifPresent(source -> check(run, atRest(run, source), findings));
        }
        site.yard().water().laterals().forEach(lateral -> {
            ZoneRun zone = zones.get(lateral.zone());
            if (zone != null) {
                lateral.runs().forEach(run -> {
                    PipeLoad load = zone.pipes().get(run.id());
                    if (load != null) {
                        check(run, load.inlet(), findings);
                    }
                });
            }
        });
        return findings;
    }

    /** At the lowest point of its route. */
    private Pressure atRest(PipeRun run, Source source) {
        double sourceM = levelM(source.at());
        double lowestM =
                run.route().points().stream().mapToDouble(this::levelM).min().orElse(sourceM);
        return new Pressure(source.staticPressure().pascals() + (sourceM - lowestM) * PipeLaw.PASCALS_PER_M);
    }

    private void check(PipeRun run, Pressure greatest, List<Finding> findings) {
        if (run.size().isEmpty()) {
            return;
        }
        PipeId id = run.id();
        Pressure rating = site.catalog().pipe(run.tradeSize().orElseThrow()).rating();
        Rule rule = site.rules().get("pipe.rating");
        Ratio share = Ratio.of(greatest.pascals() / rating.pascals());
        if (!rule.isKeptBy(share)) {
            findings.add(Finding.of(
                    rule, Subject.of(id), share, "use pipe of a higher rating, or reduce the pressure before it"));
        }
    }

    private double levelM(Point point) {
        return site.yard().terrain().ground().levelFinished(point).metres();
    }
}
