package leat.calc.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.model.finding.Finding;
import leat.model.finding.Rule;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.id.PipeId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.water.Main;
import leat.model.water.Mains;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;
import leat.model.water.Source;
import leat.model.water.WaterSystem;

/**
 * Where water of a tank, a well or a pond is led together with water of the mains. A pipe has one feed, so nobody can state
 * that two waters meet; but a pipe that ends where an outlet, a pump or the end of a pipe of the other water is will be joined
 * to it when it is built as drawn. Pipes that lie beside each other in a trench are no such case.
 */
final class CrossConnections {

    private final Site site;
    private final WaterSystem water;
    private final PipeFeeds feeds;
    private final List<Spot> spots = new ArrayList<>();

    /** Where a thing takes or gives water of the mains, or else of another source. */
    private record Spot(Id id, Point at, boolean ofMains) {}

    CrossConnections(Site site, PipeFeeds feeds) {
        this.site = site;
        this.feeds = feeds;
        water = site.yard().water();
        water.sources().forEach(source -> spots.add(new Spot(source.id(), source.at(), source instanceof Mains)));
        water.bibs().forEach(bib -> add(bib.id(), bib.at(), bib.on()));
        water.manifolds().forEach(manifold -> add(manifold.id(), manifold.at(), manifold.on()));
    }

    private void add(Id id, Point at, Optional<PipeId> on) {
        on.flatMap(feeds::sourceOf).ifPresent(source -> spots.add(new Spot(id, at, source instanceof Mains)));
    }

    List<Finding> findings() {
        List<Spot> ends = ends(water.main());
        // Of two pipes that meet the one from the tank is named.
        ends.stream().filter(Spot::ofMains).forEach(spots::add);
        List<Finding> findings = new ArrayList<>();
        for (Spot end : ends) {
            spots.stream()
                    .filter(spot -> spot.ofMains() != end.ofMains())
                    .map(spot -> spot.at().distance(end.at()))
                    .min(Length::compareTo)
                    .flatMap(gap -> finding(end.id(), gap))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    /** Ends of pipes that feed no other pipe. */
    private List<Spot> ends(Main main) {
        SortedSet<String> feeding = new TreeSet<>();
        main.runs().stream()
                .filter(run -> run.from() instanceof PipeId)
                .forEach(run -> feeding.add(run.from().name()));
        List<Spot> ends = new ArrayList<>();
        for (PipeRun run : main.runs()) {
            Optional<Source> source = feeds.sourceOf(run.id());
            if (!feeding.contains(run.id().name()) && source.isPresent()) {
                ends.add(new Spot(run.id(), run.route().end(), source.get() instanceof Mains));
            }
        }
        return ends;
    }

    private Optional<Finding> finding(Id id, Length gap) {
        Rule rule = site.rules().get("water.joined");
        return rule.isKeptBy(gap)
                ? Optional.empty()
                : Optional.of(Finding.of(
                        rule, Subject.of(id), gap, "keep them apart; fill up a tank through a free fall of air only"));
    }
}
