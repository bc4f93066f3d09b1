package leat.calc.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.calc.Progress;
import leat.model.catalog.PipeSeries;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.TradeSize;

/** The calculation that compares each pipe with the one that feeds it. */
public final class SizeReview {

    private SizeReview() {}

    /** Within a series trade sizes are compared; across series the bores, which is a note only. */
    public static SizeReviewResult run(Site site, SizingParameters parameters, Progress progress) {
        PipeFeeds feeds = site.yard().water().feeds();
        List<Finding> findings = new ArrayList<>();
        for (PipeRun run : site.yard().water().pipes().toList()) {
            Optional<TradeSize> upstream = feeds.upstreamOf(run).flatMap(PipeRun::tradeSize);
            if (upstream.isPresent() && run.tradeSize().isPresent()) {
                compare(site, run.id(), run.tradeSize().get(), upstream.get(), findings);
            }
        }
        return new SizeReviewResult(Status.COMPLETE, findings);
    }

    private static void compare(Site site, PipeId pipe, TradeSize size, TradeSize upstream, List<Finding> findings) {
        if (size.series().equals(upstream.series())) {
            PipeSeries series = site.catalog().series(size.series());
            int steps = series.rank(size.size()) - series.rank(upstream.size());
            Rule rule = site.rules().get("pipe.grows");
            if (!rule.isKeptBy(Count.of(steps))) {
                findings.add(Finding.of(
                        rule, Subject.of(pipe, "size"), Count.of(steps), "use the size of the pipe that feeds it"));
            }
            return;
        }
        Length bore = site.catalog().pipe(size).bore();
        Length feeding = site.catalog().pipe(upstream).bore();
        Rule rule = site.rules().get("pipe.grows.series");
        if (!rule.isKeptBy(bore.minus(feeding))) {
            findings.add(new Finding(
                    rule,
                    rule.severity(),
                    Subject.of(pipe, "size"),
                    bore,
                    feeding,
                    "compare the bores, not the names"));
        }
    }
}
