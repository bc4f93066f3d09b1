package leat.bench;

/** Goes through the designs one after the other and keeps the means and the best; how a design is measured is the entrant's own. */
abstract class DesignEntrant implements Entrant {

    private static final int DESIGNS = 1000;

    final DesignInstance instance;
    final DesignInstance.Draft draft;

    /** Figures of the design measured last. */
    double christiansen;

    double lowQuarter;
    double flowM3PerS;
    double lowestPressureM;

    private double price;
    private double christiansenSum;
    private double lowQuarterSum;
    private double flowSum;
    private double lowestM;
    private double bestScore;
    private int best;

    DesignEntrant(DesignInstance instance) {
        this.instance = instance;
        draft = new DesignInstance.Draft(instance.heads());
    }

    /** Flows and pressures, then depth and evenness, of {@link #draft}. */
    abstract void measure();

    @Override
    public final double solve() {
        price = 0;
        christiansenSum = 0;
        lowQuarterSum = 0;
        flowSum = 0;
        lowestM = Double.POSITIVE_INFINITY;
        bestScore = Double.POSITIVE_INFINITY;
        for (int design = 0; design < DESIGNS; design++) {
            instance.make(design, draft);
            measure();
            price += draft.price;
            christiansenSum += christiansen;
            lowQuarterSum += lowQuarter;
            flowSum += flowM3PerS;
            lowestM = Math.min(lowestM, lowestPressureM);
            double score = draft.price + DesignInstance.PER_LOST_UNIFORMITY * (1 - lowQuarter);
            if (score < bestScore) {
                bestScore = score;
                best = design;
            }
        }
        return bestScore;
    }

    @Override
    public final Answer answer() {
        return new Answer()
                .figure("designs", DESIGNS, 0, 0)
                .figure("price_mean", price / DESIGNS, 1e-6, 0)
                .figure("CU_mean", christiansenSum / DESIGNS, 1e-6, 0)
                .figure("DUlq_mean", lowQuarterSum / DESIGNS, 1e-6, 0)
                .figure("flow_mean_m3s", flowSum / DESIGNS, 1e-6, 0)
                .figure("p_min_m", lowestM, 1e-6, 0)
                .figure("best", best, 0, 0)
                .figure("best_score", bestScore, 1e-6, 0);
    }
}
