package leat.calc.hydraulics.internal;

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

    private static final int STEP_LIMIT = 200;
    private static final double TOLERANCE = 1e-11;
    /** Start with outlets at this share of the standing head: a usual loss on the way. */
    private static final double FIRST_SHARE = 0.75;
    /** Stands for "no flow" where an orifice is closed, so that no loop has to ask. */
    private static final double NO_FLOW = 1e-200;

    private final int count;
    private final int[] placeOf;
    private final int[] parent;
    private final double[] friction;
    private final double[] elevationM;
    private final double[] demand;
    private final double[] orifice2;
    private final DeviceLosses devices;
    private final SpecialOutlets specials;

    private final double[] open2;
    private final double[] flow;
    private final double[] power;
    private final double[] outlet;
    private final double[] draw;
    private final double[] drawPerM;
    private final double[] headM;
    private final double[] deviceSlope;
    private final double[] deviceOffsetM;
    private int steps;
    private int closed;

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
        devices = new DeviceLosses(count);
        specials = new SpecialOutlets(count);
        open2 = new double[count];
        flow = new double[count];
        power = new double[count];
        outlet = new double[count];
        draw = new double[count];
        drawPerM = new double[count];
        headM = new double[count];
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
        for (steps = 1; steps <= STEP_LIMIT; steps++) {
            eliminate();
            double worstM = substitute(toleranceM);
            worstM = Math.max(worstM, renew(toleranceM));
            if (worstM <= toleranceM) {
                headsFromFlows();
                return Status.CONVERGED;
            }
        }
        headsFromFlows();
        return Status.STEP_LIMIT;
    }

    /** Fills flows from outlets at a share of their standing head. Returns the greatest standing head, 1 m or more. */
    private double start(double sourceHeadM) {
        double greatestM = 1;
        closed = 0;
        for (int i = 1; i < count; i++) {
            double standingM = sourceHeadM - elevationM[i];
            greatestM = Math.max(greatestM, standingM);
            double q2 = FIRST_SHARE * orifice2[i] * standingM;
            boolean runs = q2 > 0;
            open2[i] = runs ? orifice2[i] : 0;
            outlet[i] = runs ? Math.sqrt(q2) : NO_FLOW;
            closed += !runs && orifice2[i] > 0 ? 1 : 0;
            flow[i] = outlet[i] + demand[i];
            draw[i] = demand[i];
            drawPerM[i] = 0;
        }
        specials.start(sourceHeadM, FIRST_SHARE, elevationM);
        specials.addFlows(flow);
        specials.addTangents(elevationM, draw, drawPerM);
        for (int i = count - 1; i > 0; i--) {
            flow[parent[i]] += flow[i];
        }
        for (int i = 1; i < count; i++) {
            power[i] = FlowPower.of(Math.abs(flow[i]));
        }
        devices.tangents(flow, deviceSlope, deviceOffsetM);
        return greatestM;
    }

    /** Leaves to source: what hangs on each link draws draw + drawPerM · head of the node upstream. */
    private void eliminate() {
        draw[0] = 0;
        drawPerM[0] = 0;
        for (int i = count - 1; i > 0; i--) {
            double q = outlet[i];
            double g = 0.5 * open2[i] / q;
            double a = draw[i] + 0.5 * q - g * elevationM[i];
            g += drawPerM[i];
            double rp = friction[i] * power[i];
            double slope = (1 + FlowPower.EXPONENT) * rp + deviceSlope[i];
            double offsetM = deviceOffsetM[i] - FlowPower.EXPONENT * rp * flow[i];
            double scale = 1 / (1 + slope * g);
            a = (a - g * offsetM) * scale;
            g *= scale;
            draw[i] = a;
            drawPerM[i] = g;
            draw[parent[i]] += a;
            drawPerM[parent[i]] += g;
        }
    }

    /** Source to leaves: new flows, heads and outlets. Returns how far outlets are off their law, as head. */
    private double substitute(double toleranceM) {
        double worst = 0;
        for (int i = 1; i < count; i++) {
            double rp = friction[i] * power[i];
            double slope = (1 + FlowPower.EXPONENT) * rp + deviceSlope[i];
            double offsetM = deviceOffsetM[i] - FlowPower.EXPONENT * rp * flow[i];
            double upstreamM = headM[parent[i]];
            double newFlow = draw[i] + drawPerM[i] * upstreamM;
            double newHeadM = upstreamM - (offsetM + slope * newFlow);
            headM[i] = newHeadM;
            flow[i] = newFlow;
            draw[i] = demand[i];
            drawPerM[i] = 0;
            double pressureM = newHeadM - elevationM[i];
            double q = 0.5 * (outlet[i] + open2[i] * pressureM / outlet[i]);
            worst = Math.max(worst, Math.abs(q * q - open2[i] * pressureM) - toleranceM * open2[i]);
            if (q <= 0) {
                q = NO_FLOW;
                open2[i] = 0;
                closed++;
                worst = 1;
            }
            outlet[i] = q;
        }
        return worst > 0 ? 2 * toleranceM : 0;
    }

    /** New tangents at the new flows and heads. Returns how far links and special outlets are off their law, as head. */
    private double renew(double toleranceM) {
        devices.tangents(flow, deviceSlope, deviceOffsetM);
        double worstM = 0;
        for (int i = 1; i < count; i++) {
            double p = FlowPower.of(Math.abs(flow[i]));
            power[i] = p;
            double lossM = (friction[i] * p + deviceSlope[i]) * flow[i] + deviceOffsetM[i];
            worstM = Math.max(worstM, Math.abs(headM[parent[i]] - headM[i] - lossM));
        }
        return worstM;
    }

    /** Heads that follow from the flows by the laws, in the order in which a reader would subtract the losses. */
    private void headsFromFlows() {
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
        double q = outlet[placeOf[node]];
        return q == NO_FLOW ? 0 : q;
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
