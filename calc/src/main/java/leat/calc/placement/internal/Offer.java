package leat.calc.placement.internal;

import leat.calc.internal.cells.DepthCurve;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.Profile;

/**
 * A family of heads that may be placed, in the units of the kernels.
 *
 * @param rank its place in the list of what is offered, from 0
 */
public record Offer(int rank, HeadFamily family, DepthCurve curve) {

    public static Offer of(int rank, HeadFamily family, Profile profile) {
        return new Offer(rank, family, DepthCurve.of(profile));
    }

    public double radiusM() {
        return family.jet().radius().metres();
    }

    double leastRadiusM() {
        return family.jet().leastRadius().metres();
    }

    double leastArcDeg() {
        return family.leastArc().degrees();
    }

    double mostArcDeg() {
        return family.mostArc().degrees();
    }

    /** Flow at the reference pressure, as {@link HeadFamily#referenceFlow} has it. */
    double flowM3PerS(double radiusM, double sweepDeg) {
        double full = family.jet().flow().cubicMetresPerSecond();
        double share = sweepDeg / 360;
        double radiusShare = radiusM / radiusM();
        return switch (family.jet().rule()) {
            case FIXED, PER_LENGTH -> full;
            case BY_ARC -> full * share;
            case BY_AREA -> full * share * radiusShare * radiusShare;
        };
    }
}
