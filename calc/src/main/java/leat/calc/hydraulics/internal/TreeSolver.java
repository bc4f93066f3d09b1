package leat.calc.hydraulics.internal;

import leat.calc.internal.pipes.FlowPower;
import leat.calc.internal.pipes.PipeLaw;
import org.jspecify.annotations.Nullable;

/**
 * Flows and heads in a tree of links with one fixed head at the root. Prepare once, set what changes, solve again.
 * <p>
 * Link i feeds node i from its parent, which has a smaller number; node 0 is the source. A link loses
 * r · Q^1.852 + k2 · Q² + device law; a node may have an outlet (flow after its pressure) and a fixed demand.
 * <p>
 * Method: Newton on flows and heads together (Todini and Pilati 1988, cited from memory). In a tree the linear system
 * of a step needs no matrix: seen from upstream, all that hangs on a link draws a + g · H, which adds up from the leaves
 * to the source; heads and flows follow from the source to the leaves. Each step takes O(n) and allocates nothing.
 * Nothing is divided by a link's slope, so links without flow need no special care.
 * <p>
 * Not thread-safe. Heads should be measured from a datum near the site: what counts is the difference to the elevations.
 */
public final class TreeSolver {

    /** How a solution ended. */
    public enum Status {
        /** Every law holds to a part in 10^11 of the head available. */
        CONVERGED,
        /** The last step is given; do not use it as a figure. */
        STEP_LIMIT
    }

    private static final int PLAIN_STEPS = 25;
    private static final int MOST_ATTEMPTS = 8;
    /** The search hands over to plain steps when it moves by less than this many tolerances. */
    private static final double NEAR = 1e5;

    private static final double TOLERANCE = 1e-11;
    /** Start with outlets at this share of the standing head: a usual loss on the way. */
    private static final double FIRST_SHARE = 0.75;
    /** An orifice that had to close opens with this share of its last flow, or it might open and close for ever. */
    private static final double REOPEN_SHARE = 0.25;

    private static final double LEAST_REOPEN_SHARE = 1e-6;

    final int count;
    private final int[] placeOf;
    final int[] parent;
    final double[] friction;
    private final double[] elevationM;
    final double[] demand;
    private final double[] orifice2;
    private final double[] overOrifice2;
    final DeviceLosses devices;
    private final SpecialOutlets specials;

    private final double[] open2;
    private final double[] reopenAt;
    final double[] flow;
    final double[] power;
    private final double[] outlet;
    private final double[] draw;
    private final double[] drawPerM;
    final double[] headM;
    private final double[] slope;
    private final double[] offsetM;
    private final double[] deviceSlope;
    private final double[] deviceOffsetM;
    private int steps;
    private int closed;
    private @Nullable HeadSearch search;

    /**
     * @param parent of each node, smaller than the node itself; parent[0] is not used
     * @throws IllegalArgumentException if a parent is not smaller than its child
     */
    public TreeSolver(int[] parent) {
        count = parent.length;
        placeOf = BreadthFirst.placeOf(parent);
        this.parent = new int[count];
        for (int node = 1; node < count; node++) {
            this.parent[placeOf[node]] = placeOf[parent[node]];
        }
        friction = new double[count];
        elevationM = new double[count];
        demand = new double[count];
        orifice2 = new double[count];
        overOrifice2 = new double[count];
        devices = new DeviceLosses(count);
        specials = new SpecialOutlets(count);
        open2 = new double[count];
        reopenAt = new double[count];
        flow = new double[count];
        power = new double[count];
        outlet = new double[count];
        draw = new double[count];
        drawPerM = new double[count];
        headM = new double[count];
        slope = new double[count];
        offsetM = new double[count];
        deviceSlope = new double[count];
        deviceOffsetM = new double[count];
    }

    /** Friction and fittings of the link that feeds {@code node}; coefficients from {@link PipeLaw}. */
    public void setPipe(int node, double frictionCoefficient, double minorCoefficient) {
        friction[placeOf[node]] = frictionCoefficient;
        devices.setMinor(placeOf[node], minorCoefficient);
    }

    /** A device in the link that feeds {@code node}: loss = threshold + k · q^n, threshold and k 0 or more, n 1 or more. */
    public void setDevice(int node, double thresholdM, double k, double n) {
        devices.setDevice(placeOf[node], thresholdM, k, n);
    }

    public void setElevation(int node, double newElevationM) {
        elevationM[placeOf[node]] = newElevationM;
    }

    /** Flow that leaves {@code node} whatever the pressure. */
    public void setDemand(int node, double demandM3PerS) {
        demand[placeOf[node]] = demandM3PerS;
    }

    /** An outlet q = k · p^x with p in metres, x above 0 and at most 1; no flow without pressure. k = 0 closes it. */
    public void setOutlet(int node, double k, double x) {
        int place = placeOf[node];
        if (x == 0.5) {
            orifice2[place] = k * k;
            overOrifice2[place] = k == 0 ? 0 : 1 / (k * k);
            specials.remove(place);
        } else {
            orifice2[place] = 0;
            specials.put(place, false, k, x);
        }
    }

    /** An outlet with one flow above {@code leastPressureM}, falling to nothing smoothly below it. */
    public void setCompensatingOutlet(int node, double flowM3PerS, double leastPressureM) {
        orifice2[placeOf[node]] = 0;
        specials.put(placeOf[node], true, flowM3PerS, leastPressureM);
    }

    /** Solves anew, from a first guess that depends on nothing but what was set. */
    public Status solve(double sourceHeadM) {
        headM[0] = sourceHeadM;
        double toleranceM = TOLERANCE * start(sourceHeadM);
        steps = 0;
        boolean done = run(PLAIN_STEPS, toleranceM);
        for (int attempt = 0; !done && attempt < MOST_ATTEMPTS; attempt++) {
            if (search == null) {
                search = new HeadSearch(this);
            }
            search.approach(NEAR * toleranceM);
            lawsFromHeads(0);

            done = run(PLAIN_STEPS, toleranceM);
        }
        headsFromFlows();
        return done ? Status.CONVERGED : Status.STEP_LIMIT;
    }

    private boolean run(int most, double toleranceM) {
        for (int i = 0; i < most; i++) {
            steps++;
            if (step() <= toleranceM) {
                return true;
            }
        }
        return false;
    }

    /** Fills flows from outlets at a share of their standing head. Returns the greatest standing head, 1 m or more. */
    private double start(double sourceHeadM) {
        double greatestM = 1;
        closed = 0;
        flow[0] = 0;
        for (int i = 1; i < count; i++) {
            double standingM = sourceHeadM - elevationM[i];
            if (standingM > greatestM) {
                greatestM = standingM;
            }
            double q2 = FIRST_SHARE * orifice2[i] * standingM;
            boolean runs = q2 > 0;
            open2[i] = runs ? orifice2[i] : 0;
            outlet[i] = runs ? Math.sqrt(q2) : TreeSweeps.NO_FLOW;
            closed += !runs && orifice2[i] > 0 ? 1 : 0;
            reopenAt[i] = Double.POSITIVE_INFINITY;
            flow[i] = outlet[i] + demand[i];
        }
        specials.start(sourceHeadM, FIRST_SHARE, elevationM);
        specials.addFlows(flow);
        for (int i = count - 1; i > 0; i--) {
            flow[parent[i]] += flow[i];
        }
        for (int i = 1; i < count; i++) {
            power[i] = FlowPower.of(Math.abs(flow[i]));
        }
        devices.tangents(flow, deviceSlope, deviceOffsetM);
        return greatestM;
    }

    /** One Newton step. Returns a bound of how far any law is off, in metres of head. */
    private double step() {
        solveTangents();
        double offM = TreeSweeps.outlets(open2, overOrifice2, elevationM, headM, outlet);
        if (offM == Double.POSITIVE_INFINITY) {
            close();
        }
        if (closed > 0 && reopen()) {
            offM = Double.POSITIVE_INFINITY;
        }
        offM += specials.advance(headM, elevationM);
        devices.tangents(flow, deviceSlope, deviceOffsetM);
        return offM + TreeSweeps.powers(parent, friction, flow, headM, deviceSlope, deviceOffsetM, power);
    }

    /** New flows and heads, at which all present tangents hold. */
    void solveTangents() {
        TreeSweeps.linkTangents(friction, power, flow, deviceSlope, deviceOffsetM, slope, offsetM);
        TreeSweeps.outletTangents(open2, outlet, elevationM, demand, draw, drawPerM);
        specials.addTangents(elevationM, draw, drawPerM);
        TreeSweeps.eliminate(parent, slope, offsetM, draw, drawPerM);
        TreeSweeps.substitute(parent, slope, offsetM, draw, drawPerM, flow, headM);
    }

    /** Takes outlets as the laws give them at the present heads, and the tangents of devices at the present flows. */
    void lawsFromHeads(double extraResistance) {
        closed = 0;
        for (int i = 1; i < count; i++) {
            double q2 = orifice2[i] * (headM[i] - elevationM[i]);
            boolean runs = q2 > 0;
            open2[i] = runs ? orifice2[i] : 0;
            outlet[i] = runs ? Math.sqrt(q2) : TreeSweeps.NO_FLOW;
            closed += !runs && orifice2[i] > 0 ? 1 : 0;
            deviceSlope[i] = 0;
            deviceOffsetM[i] = 0;
        }
        specials.restart(headM, elevationM);
        devices.tangents(flow, deviceSlope, deviceOffsetM);
        for (int i = 1; i < count; i++) {
            deviceSlope[i] += extraResistance;
        }
    }

    /** Flow of all outlets at a place. */
    double outletAt(int place) {
        return (open2[place] > 0 ? outlet[place] : 0) + specials.flowAt(place);
    }

    /** Closes orifices that would suck. */
    private void close() {
        for (int i = 1; i < count; i++) {
            double q = outlet[i];
            if (q <= 0) {
                double before = q + Math.sqrt(q * q - orifice2[i] * (headM[i] - elevationM[i]));
                reopenAt[i] = REOPEN_SHARE * before;
                outlet[i] = TreeSweeps.NO_FLOW;
                open2[i] = 0;
                closed++;
            }
        }
    }

    /** Opens closed orifices that have pressure again. */
    private boolean reopen() {
        boolean any = false;
        for (int i = 1; i < count; i++) {
            double pressureM = headM[i] - elevationM[i];
            if (open2[i] < orifice2[i] && pressureM > 0) {
                open2[i] = orifice2[i];
                double lawful = Math.sqrt(orifice2[i] * pressureM);
                outlet[i] = Math.max(Math.min(lawful, reopenAt[i]), LEAST_REOPEN_SHARE * lawful);
                closed--;
                any = true;
            }
        }
        return any;
    }

    /** Heads that follow from the flows by the laws, in the order in which a reader would subtract the losses. */
    private void headsFromFlows() {
        devices.tangents(flow, deviceSlope, deviceOffsetM);
        for (int i = 1; i < count; i++) {
            headM[i] = headM[parent[i]] - lossAt(i);
        }
    }

    private double lossAt(int place) {
        return (friction[place] * power[place] + deviceSlope[place]) * flow[place] + deviceOffsetM[place];
    }

    /** Number of nodes, the source included. */
    public int nodeCount() {
        return count;
    }

    /** Newton steps of the last solution. */
    public int steps() {
        return steps;
    }

    public double headM(int node) {
        return headM[placeOf[node]];
    }

    /** Head above the node's elevation; negative where water would be sucked. */
    public double pressureM(int node) {
        return headM[placeOf[node]] - elevationM[placeOf[node]];
    }

    /** Flow in the link that feeds {@code node}. */
    public double flowM3PerS(int node) {
        return flow[placeOf[node]];
    }

    /** Loss of head in the link that feeds {@code node}; its head is that of its parent less exactly this. */
    public double lossM(int node) {
        return lossAt(placeOf[node]);
    }

    /** Flow of the outlet at {@code node}, without fixed demand. */
    public double outletM3PerS(int node) {
        return outletAt(placeOf[node]);
    }

    /** Flow from the source. */
    public double inflowM3PerS() {
        double sum = 0;
        for (int i = 1; i < count && parent[i] == 0; i++) {
            sum += flow[i];
        }
        return sum;
    }
}
