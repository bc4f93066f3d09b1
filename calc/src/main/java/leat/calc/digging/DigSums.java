package leat.calc.digging;

import leat.calc.digging.internal.Earthwork;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Volume;
import leat.model.trench.TrenchSegment;

/** Adds trenches up. */
final class DigSums {

    private double onPlanM;
    private double onGroundM;
    private double byHandM;
    private double bankM3;
    private double looseM3;
    private double beddingM3;
    private double backfillM3;
    private double leftOverM3;
    private double separateM;
    private double separateM3;

    void add(TrenchSegment trench, Dug dug, double ownTrenchesM3) {
        onPlanM += dug.lengthM;
        onGroundM += dug.slopingM();
        byHandM += trench.byHand() ? dug.slopingM() : 0;
        bankM3 += dug.bankM3();
        looseM3 += dug.looseM3();
        beddingM3 += dug.beddingM3();
        backfillM3 += dug.backfillM3();
        leftOverM3 += dug.leftOverM3();
        separateM += dug.lengthM * Math.max(1, dug.thingsCount());
        separateM3 += dug.thingsCount() == 0 ? dug.bankM3() : ownTrenchesM3;
    }

    DigTotals totals(Volume load) {
        return new DigTotals(
                new Length(onPlanM),
                new Length(onGroundM),
                new Length(byHandM),
                new Volume(bankM3),
                new Volume(looseM3),
                new Volume(beddingM3),
                new Volume(backfillM3),
                new Volume(leftOverM3),
                Count.of(Earthwork.loadsCount(leftOverM3, load.cubicMetres())));
    }

    DigSaving saving() {
        return new DigSaving(
                new Length(separateM),
                new Volume(separateM3),
                Ratio.of(separateM > 0 ? 1 - onPlanM / separateM : 0),
                Ratio.of(separateM3 > 0 ? 1 - bankM3 / separateM3 : 0));
    }
}
