package leat.calc.takeoff;

import leat.model.catalog.Catalog;
import leat.model.catalog.PipeSpec;
import leat.model.quantity.Length;
import leat.model.water.PipeRun;

/** What pipes and their fittings are called when they are bought, and which fit each other. */
final class Goods {

    /** Two tables may round the same diameter differently. */
    private static final double SAME_DIAMETER_M = 0.000_2;

    private final Catalog catalog;
    private final Length coil;

    Goods(Catalog catalog, TakeoffParameters parameters) {
        this.catalog = catalog;
        this.coil = parameters.coil();
    }

    /** Key of the pipe itself, such as {@code pipe 1 in PVC Schedule 40}. */
    String pipe(PipeRun run) {
        return "pipe " + size(run) + " " + run.series();
    }

    /** Key of a fitting for the pipe, such as {@code tee 1 in PVC}: one fits all series of the same outside. */
    String fitting(String kind, PipeRun run) {
        return kind + " " + size(run) + " " + material(run);
    }

    String size(PipeRun run) {
        return run.size().orElse("of open size");
    }

    String material(PipeRun run) {
        return catalog.series(run.series()).sizes().get(0).material();
    }

    double boreM(PipeRun run) {
        return run.tradeSize().map(size -> catalog.pipe(size).bore().metres()).orElse(0.0);
    }

    boolean isCoil(PipeRun run) {
        return run.tradeSize()
                .map(size -> catalog.pipe(size).stock().compareTo(coil) >= 0)
                .orElse(false);
    }

    boolean isSameSize(PipeRun one, PipeRun other) {
        return size(one).equals(size(other));
    }

    /** Whether fittings of the one go onto the other where sizes agree: the same stuff, and made to one diameter. */
    boolean fits(PipeRun one, PipeRun other) {
        if (one.series().equals(other.series())) {
            return true;
        }
        if (!material(one).equals(material(other))) {
            return false;
        }
        return catalog.series(one.series()).sizes().stream()
                .anyMatch(a -> catalog.series(other.series()).sizes().stream()
                        .anyMatch(b -> a.size().size().equals(b.size().size()) && isSameMake(a, b)));
    }

    private static boolean isSameMake(PipeSpec a, PipeSpec b) {
        return isNear(a.outside(), b.outside()) || isNear(a.bore(), b.bore());
    }

    private static boolean isNear(Length one, Length other) {
        return Math.abs(one.metres() - other.metres()) <= SAME_DIAMETER_M;
    }
}
