package leat.calc.digging;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.Progress;
import leat.model.fault.InvalidValueException;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Rule;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.id.SegmentId;
import leat.model.plan.Site;
import leat.model.site.Phase;
import leat.model.trench.TrenchSegment;

/** The calculation that measures trenches as they are dug. */
public final class Digging {

    private Digging() {}

    /** Measures all trenches, given and planned. */
    public static DiggingResult run(Site site, DiggingParameters parameters, Progress progress) {
        var things = new LaidThings(site, parameters);
        SortedMap<SegmentId, TrenchDig> figures = new TreeMap<>();
        SortedMap<Phase, DigSums> byPhase = new TreeMap<>();
        var all = new DigSums();
        List<Finding> findings = new ArrayList<>();
        Status status = Status.COMPLETE;
        List<TrenchSegment> trenches = site.yard().trenches();
        for (TrenchSegment trench : trenches) {
            if (progress.stopped()) {
                status = Status.STOPPED;
                break;
            }
            progress.at((double) figures.size() / trenches.size(), "digging " + trench.id());
            var dug = new Dug(trench, things.in(trench), site, parameters);
            figures.put(trench.id(), dug.figures());
            double separateM3 = dug.separateM3(site);
            all.add(trench, dug, separateM3);
            byPhase.computeIfAbsent(trench.phase(), key -> new DigSums()).add(trench, dug, separateM3);
            addDepth(trench, site, findings);
        }
        SortedMap<Phase, DigTotals> totals = new TreeMap<>();
        byPhase.forEach((phase, sums) -> totals.put(phase, sums.totals(parameters.load())));
        return new DiggingResult(status, figures, totals, all.totals(parameters.load()), all.saving(), findings);
    }

    /**
     * How a figure of a trench came about, by the same kernels; its last line equals the figure to the last bit.
     *
     * @param figure {@code length}, {@code width}, {@code volume}, {@code loose}, {@code bedding} or {@code backfill}
     * @throws InvalidValueException if there is no such trench or figure
     */
    public static Ledger why(Site site, DiggingParameters parameters, SegmentId id, String figure) {
        TrenchSegment trench = site.yard().trenches().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException("why", "trench", "'" + id + "'", "a trench of the yard"));
        var dug = new Dug(trench, new LaidThings(site, parameters).in(trench), site, parameters);
        return new DigLedger(trench, dug, site, parameters).of(figure);
    }

    /**
     * How a figure of all trenches together came about, trench by trench; its last line equals the figure of
     * {@link DigTotals} or {@link DigSaving} to the last bit.
     *
     * @param figure {@code length}, {@code by hand}, {@code volume}, {@code loose}, {@code bedding}, {@code backfill},
     *     {@code left over} or {@code loads}, alone or followed by {@code now} or {@code later}; {@code saved length} or
     *     {@code saved volume}
     * @throws InvalidValueException if there is no such figure
     */
    public static Ledger why(Site site, DiggingParameters parameters, String figure) {
        return new DigTotalsLedger(site, parameters).of(figure);
    }

    /** Only the graver of the two counts. At the very depth the caution holds already. */
    private static void addDepth(TrenchSegment trench, Site site, List<Finding> findings) {
        Rule support = site.rules().get("digging.depth.support");
        Rule exit = site.rules().get("digging.depth.exit");
        if (trench.depth().si() >= support.limit().si()) {
            findings.add(
                    Finding.of(
                            support,
                            Subject.of(trench.id(), "depth"),
                            trench.depth(),
                            trench.depth().compareTo(DigLaw.ENGINEER_DEPTH) > 0
                                    ? "a registered engineer designs what holds the sides; leave it to a firm that does this work"
                                    : "nobody goes in without shoring, a shield or sloped sides; leave it to people trained for it"));
        } else if (trench.depth().si() >= exit.limit().si()) {
            findings.add(Finding.of(
                    exit,
                    Subject.of(trench.id(), "depth"),
                    trench.depth(),
                    "keep a ladder within reach and spoil back from the edge; sides may fall in at any depth"));
        }
    }
}
