package leat.calc.phasing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.stream.Collectors;
import leat.calc.Progress;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Severity;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.Id;
import leat.model.plan.Site;
import leat.model.plan.Temporary;
import leat.model.quantity.Count;

/**
 * The calculation that holds this year's works against what comes later: nothing of now may depend on a thing of later
 * unless the yard states how it does without.
 */
public final class Phasing {

    private Phasing() {}

    /** Looks at all of the plan; ends of what is laid ahead come by the thing that ends. */
    public static PhasingResult run(Site site, PhasingParameters parameters, Progress progress) {
        progress.at(0, "phases");
        var later = new LaterThings(site.yard());
        SortedMap<Id, SortedSet<Id>> unmet = Needs.unmet(site.yard(), later);
        List<Finding> findings = new ArrayList<>();
        unmet.forEach((thing, needed) -> findings.add(finding(site, thing, needed)));
        for (Temporary one : site.yard().temporary()) {
            if (unmet.keySet().stream().noneMatch(one::isFor)) {
                findings.add(Finding.of(
                        site.rules().get("phase.temporary"),
                        Subject.yard(),
                        Count.of(1),
                        "nothing of later is in the way of " + one.subject() + "; take the statement out"));
            }
        }
        return new PhasingResult(Status.COMPLETE, EarlyEnds.of(site.yard(), later), findings);
    }

    private static Finding finding(Site site, Id thing, SortedSet<Id> needed) {
        Rule rule = site.rules().get("phase.order");
        Count count = Count.of(needed.size());
        String names = needed.stream().map(one -> one.kind() + " " + one.name()).collect(Collectors.joining(", "));
        Optional<Temporary> temporary =
                site.yard().temporary().stream().filter(one -> one.isFor(thing)).findFirst();
        if (temporary.isPresent()) {
            return new Finding(
                    rule,
                    Severity.NOTE,
                    Subject.of(thing),
                    count,
                    rule.limit(),
                    "for the time being: " + temporary.get().arrangement() + "; to be put right when these come: "
                            + names);
        }
        return Finding.of(
                rule,
                Subject.of(thing),
                count,
                "build these now as well: " + names + "; or state a temporary arrangement for " + thing.kind() + " "
                        + thing.name());
    }
}
