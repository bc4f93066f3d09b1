package leat.calc.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.internal.pipes.PipeLaw;
import leat.calc.sizing.internal.SizeChoice;
import leat.model.catalog.PipeSpec;
import leat.model.finding.Reason;
import leat.model.finding.Subject;
import leat.model.id.PipeId;
import leat.model.plan.Aspect;
import leat.model.plan.Site;
import leat.model.water.PipeFeeds;
import leat.model.water.PipeRun;

/**
 * All pipes of a site as one tree, with what each size of each costs in head and in pipe. Sizes are classes of bore over
 * all series in use, so that pipes of different series can be compared; a pipe may only have the classes of its own.
 */
final class SizeTree {

    static final int FREE = -1;

    private final Site site;
    private final List<PipeRun> runs;
    private final SortedMap<PipeId, Integer> nodeOf = new TreeMap<>();
    private final int[] parent;
    private final double[] boreM;
    private final PipeSpec[][] specs;
    private final double[][] lossM;
    private final double[][] price;
    private final int[] given;
    private final int[] largest;
    private final List<Reason> reasons = new ArrayList<>();

    SizeTree(Site site, SizingParameters parameters, DesignFlows flows) {
        this.site = site;
        runs = site.yard().water().pipes().toList();
        boreM = classes();
        int count = runs.size() + 1;
        parent = new int[count];
        specs = new PipeSpec[count][boreM.length];
        lossM = new double[count][boreM.length];
        price = new double[count][boreM.length];
        given = new int[count];
        largest = new int[count];
        largest[0] = boreM.length - 1;
        given[0] = FREE;
        PipeFeeds feeds = site.yard().water().feeds();
        for (int node = 1; node < count; node++) {
            PipeRun run = runs.get(node - 1);
            nodeOf.put(run.id(), node);
            parent[node] = feeds.upstreamOf(run)
                    .map(up -> nodeOf.getOrDefault(up.id(), 0))
                    .orElse(0);
            weigh(node, run, parameters, flows.of(run.id()));
            allow(node, run, flows.of(run.id()));
        }
    }

    private double[] classes() {
        SortedSet<Double> bores = new TreeSet<>();
        runs.stream()
                .map(run -> site.catalog().series(run.series()))
                .forEach(series ->
                        series.sizes().forEach(spec -> bores.add(spec.bore().metres())));
        return bores.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void weigh(int node, PipeRun run, SizingParameters parameters, double flowM3PerS) {
        Arrays.fill(price[node], Double.POSITIVE_INFINITY);
        double lengthM = run.route().lengthM();
        for (PipeSpec spec : site.catalog().series(run.series()).sizes()) {
            int of = classOf(spec);
            double r = PipeLaw.frictionCoefficient(
                    lengthM, spec.bore().metres(), spec.hazenWilliamsC().value());
            specs[node][of] = spec;
            lossM[node][of] = (1 + parameters.fittings().value()) * PipeLaw.lossM(r, 0, flowM3PerS);
            price[node][of] = lengthM * spec.outside().metres();
        }
    }

    /** Narrows the classes of a free pipe to those that are slow enough and no larger than what feeds it. */
    private void allow(int node, PipeRun run, double flowM3PerS) {
        given[node] = FREE;
        if (!isFree(run)) {
            given[node] = classOf(site.catalog().pipe(run.tradeSize().orElseThrow()));
            largest[node] = given[node];
            return;
        }
        double mostMPerS = site.rules().get("hydraulics.velocity").limit().si();
        int most = largest[parent[node]];
        int widest = FREE;
        int slowest = FREE;
        for (int of = boreM.length - 1; of >= 0; of--) {
            if (price[node][of] < Double.POSITIVE_INFINITY && of <= most) {
                widest = Math.max(widest, of);
                boolean slow = PipeLaw.velocityMPerS(flowM3PerS, boreM[of]) <= mostMPerS;
                slowest = slow ? Math.max(slowest, of) : slowest;
                price[node][of] = slow ? price[node][of] : Double.POSITIVE_INFINITY;
            }
        }
        if (slowest == FREE) {
            force(node, run, widest);
        }
        largest[node] = given[node] == FREE ? slowest : given[node];
    }

    /** No size is slow enough: takes the widest that is no larger than what feeds it, or else the smallest there is. */
    private void force(int node, PipeRun run, int widest) {
        given[node] = widest == FREE
                ? classOf(site.catalog().series(run.series()).sizes().get(0))
                : widest;
        price[node][given[node]] =
                run.route().lengthM() * specs[node][given[node]].outside().metres();
        reasons.add(
                new Reason(
                        Subject.of(run.id(), "size"),
                        widest == FREE
                                ? "its series has no size as small as the pipe that feeds it"
                                : "no size that may stand there keeps the velocity rule at the most that its heads could draw"));
    }

    private boolean isFree(PipeRun run) {
        return run.size().isEmpty() || site.yard().isPlanned(run.id(), Aspect.SIZE) && !run.existing();
    }

    private int classOf(PipeSpec spec) {
        return Arrays.binarySearch(boreM, spec.bore().metres());
    }

    /** Head lost from the source to the end of a pipe when each pipe has the largest size that it may have. */
    double leastLossM(PipeId pipe) {
        double sum = 0;
        for (int node = node(pipe); node > 0; node = parent[node]) {
            sum += lossM[node][largest[node]];
        }
        return sum;
    }

    int node(PipeId pipe) {
        return nodeOf.getOrDefault(pipe, 0);
    }

    /** @param neededHeadM at the end of each pipe, as head that may not be lost below 0 at the source */
    SizeChoice.Sizes choose(double[] neededHeadM) {
        return SizeChoice.cheapest(parent, lossM, price, neededHeadM, given, 0)
                .orElseThrow(() -> new AssertionError("the largest sizes were found to do"));
    }

    /** The run with the size of a class; given runs come out equal. */
    PipeRun sized(PipeRun run, int of) {
        return isFree(run) ? run.withSize(specs[node(run.id())][of].size().size()) : run;
    }

    boolean isSizedHere(PipeRun run) {
        return isFree(run);
    }

    int count() {
        return parent.length;
    }

    List<Reason> reasons() {
        return reasons;
    }
}
