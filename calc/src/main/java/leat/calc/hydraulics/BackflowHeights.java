package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import leat.model.catalog.DeviceKind;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.water.BackflowPreventer;
import leat.model.water.Lateral;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/** How high backflow preventers stand: vacuum breakers above all outlets behind them, others clear of the ground. */
final class BackflowHeights {

    private static final String RAISE = "set it higher; the local code and the water supplier decide";

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;

    BackflowHeights(Site site) {
        this.site = site;
        water = site.yard().water();
        feeds = water.feeds();
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (BackflowPreventer backflow : water.backflows()) {
            DeviceKind kind = site.catalog().device(backflow.device()).kind();
            switch (kind) {
                case PRESSURE_VACUUM_BREAKER -> aboveOutlets("water.backflow.pvb", backflow, findings);
                case ATMOSPHERIC_VACUUM_BREAKER -> aboveOutlets("water.backflow.avb", backflow, findings);
                case REDUCED_PRESSURE -> check("water.backflow.rp", backflow, backflow.height(), findings);
                default -> {
                    // a double check assembly may stand in the ground; all else is no backflow preventer
                }
            }
        }
        return findings;
    }

    private void aboveOutlets(String ruleId, BackflowPreventer backflow, List<Finding> findings) {
        OptionalDouble highestM = outletLevelsM(backflow.on()).max();
        PipeRun run = feeds.pipe(backflow.on()).orElseThrow();
        if (highestM.isPresent()) {
            double ownM = levelM(run.route().start()) + backflow.height().metres();
            check(ruleId, backflow, new Length(ownM - highestM.getAsDouble()), findings);
        }
    }

    /** Levels of heads, risen, and of bibs behind a pipe. */
    private DoubleStream outletLevelsM(PipeId pipe) {
        Stream<Double> heads = water.laterals().stream()
                .filter(lateral -> isBehind(lateral, pipe))
                .flatMap(lateral -> lateral.heads().keySet().stream())
                .map(id -> water.head(id).orElseThrow())
                .map(head -> levelM(head.at())
                        + site.catalog().head(head.family()).popUp().metres());
        Stream<Double> bibs = water.bibs().stream()
                .filter(bib -> bib.on().filter(on -> isBehind(on, pipe)).isPresent())
                .map(bib -> levelM(bib.at()));
        return Stream.concat(heads, bibs).mapToDouble(level -> level);
    }

    private boolean isBehind(Lateral lateral, PipeId pipe) {
        return !lateral.runs().isEmpty() && isBehind(lateral.runs().get(0).id(), pipe);
    }

    private boolean isBehind(PipeId one, PipeId pipe) {
        return feeds.pathTo(one).stream().anyMatch(run -> run.id().equals(pipe));
    }

    private void check(String ruleId, BackflowPreventer backflow, Length measured, List<Finding> findings) {
        Rule rule = site.rules().get(ruleId);
        if (!rule.isKeptBy(measured)) {
            findings.add(Finding.of(rule, Subject.of(backflow.id(), "height"), measured, RAISE));
        }
    }

    private double levelM(Point point) {
        return site.yard().terrain().ground().levelFinished(point).metres();
    }
}
