package leat.calc.trenching;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.model.finding.Finding;
import leat.model.finding.Status;
import leat.model.finding.Subject;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;

/** The calculation that looks over the trenches of a yard: how long they are, where they run, how deep pipes lie. */
public final class TrenchReview {

    private TrenchReview() {}

    /** Measures all trenches, given and planned. */
    public static TrenchReviewResult run(Site site, TrenchReviewParameters parameters, Progress progress) {
        List<Finding> findings = new ArrayList<>();
        var places = new TrenchPlaces(site);
        Status status = Status.COMPLETE;
        List<TrenchSegment> trenches = site.yard().trenches();
        for (int i = 0; i < trenches.size(); i++) {
            if (progress.stopped()) {
                status = Status.STOPPED;
                break;
            }
            progress.at(
                    (double) i / trenches.size(), "trench " + trenches.get(i).id());
            places.look(trenches.get(i), findings);
            TrenchCovers.look(trenches.get(i), site, findings);
        }
        addMissing(site, findings);
        new HoleReview(site, findings).look();
        double trenchM = lengthM(trenches);
        double pipeM = newPipes(site.yard()).stream()
                .mapToDouble(run -> run.route().lengthM())
                .sum();
        double trenchedM = trenches.stream()
                .mapToDouble(
                        trench -> trench.route().lengthM() * trench.contents().size())
                .sum();
        return new TrenchReviewResult(
                status,
                new Length(trenchM),
                new Length(
                        lengthM(trenches.stream().filter(TrenchSegment::byHand).toList())),
                new Length(pipeM),
                Ratio.of(trenchedM > 0 ? Math.max(0, 1 - trenchM / trenchedM) : 0),
                findings);
    }

    private static double lengthM(List<TrenchSegment> trenches) {
        return trenches.stream().mapToDouble(trench -> trench.route().lengthM()).sum();
    }

    private static List<PipeRun> newPipes(Yard yard) {
        return yard.water().pipes().filter(run -> !run.existing()).toList();
    }

    private static void addMissing(Site site, List<Finding> findings) {
        for (PipeRun run : newPipes(site.yard())) {
            double inTrenchM = lengthM(site.yard().trenches().stream()
                    .filter(trench -> trench.contents().contains(run.id()))
                    .toList());
            Length bare = new Length(Math.max(0, run.route().lengthM() - inTrenchM));
            if (!site.rules().get("trench.missing").isKeptBy(bare)) {
                findings.add(Finding.of(
                        site.rules().get("trench.missing"),
                        Subject.of(run.id()),
                        bare,
                        "let trenches be planned, or state the one that it lies in"));
            }
        }
    }
}
