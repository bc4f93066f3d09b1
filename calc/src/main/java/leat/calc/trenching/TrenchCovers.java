package leat.calc.trenching;

import java.util.List;
import java.util.Optional;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;
import leat.model.water.WaterSystem;

/** How deep pipes lie: from finished grade to the top of the pipe, which lies on the bottom of its trench. */
final class TrenchCovers {

    private TrenchCovers() {}

    static void look(TrenchSegment trench, Site site, List<Finding> findings) {
        WaterSystem water = site.yard().water();
        List<PipeId> main = water.main().runs().stream().map(PipeRun::id).toList();
        hold(trench, trench.pipes().stream().filter(main::contains).toList(), "trench.cover.main", site, findings);
        hold(
                trench,
                trench.pipes().stream().filter(pipe -> !main.contains(pipe)).toList(),
                "trench.cover.lateral",
                site,
                findings);
    }

    /** The thickest of the pipes counts; one without a size counts as thin. */
    private static void hold(TrenchSegment trench, List<PipeId> pipes, String id, Site site, List<Finding> findings) {
        Rule rule = site.rules().get(id);
        Optional<Length> cover = pipes.stream()
                .map(pipe -> trench.depth().minus(outside(pipe, site)))
                .min(Length::compareTo);
        if (cover.isPresent() && !rule.isKeptBy(cover.get())) {
            findings.add(Finding.of(
                    rule,
                    Subject.of(trench.id(), "depth"),
                    cover.get(),
                    "dig deeper; frost and local codes may ask for more"));
        }
    }

    private static Length outside(PipeId pipe, Site site) {
        return site.yard()
                .water()
                .pipe(pipe)
                .flatMap(PipeRun::tradeSize)
                .map(size -> site.catalog().pipe(size).outside())
                .orElse(Length.ZERO);
    }
}
