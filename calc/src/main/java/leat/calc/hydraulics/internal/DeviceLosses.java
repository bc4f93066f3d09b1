package leat.calc.hydraulics.internal;

import java.util.Arrays;
import leat.calc.internal.pipes.FlowPower;

/**
 * Losses beside friction on a few links: fittings (k2 · q²) and devices such as meter, backflow preventer, filter or
 * valve (threshold + k · q^n as soon as water runs).
 * <p>
 * The threshold grows from 0 to its full size over the first {@value #RAMP_M3_PER_S} m³/s (0.36 L/h), a convention that
 * keeps the law continuous; a device that stands still holds back no more than the water presses.
 */
final class DeviceLosses {

    static final double RAMP_M3_PER_S = 1e-7;

    private static final int NONE = -1;

    private final int[] entryOf;
    private int count;
    private int[] link = new int[0];
    private double[] minorCoefficient = new double[0];
    private double[] thresholdM = new double[0];
    private double[] coefficient = new double[0];
    private double[] exponent = new double[0];

    DeviceLosses(int links) {
        entryOf = new int[links];
        Arrays.fill(entryOf, NONE);
    }

    boolean has(int ofLink) {
        return entryOf[ofLink] != NONE;
    }

    /** Loss at a flow of 0 or more; 0 for a link without device. */
    double lossM(int ofLink, double flowM3PerS) {
        return has(ofLink) ? lossOf(entryOf[ofLink], flowM3PerS) : 0;
    }

    void setMinor(int ofLink, double newMinorCoefficient) {
        if (newMinorCoefficient != 0 || entryOf[ofLink] != NONE) {
            int entry = entry(ofLink);
            minorCoefficient[entry] = newMinorCoefficient;
        }
    }

    void setDevice(int ofLink, double newThresholdM, double newCoefficient, double newExponent) {
        int entry = entry(ofLink);
        thresholdM[entry] = newThresholdM;
        coefficient[entry] = newCoefficient;
        exponent[entry] = newExponent;
    }

    /** Writes slope and offset of the tangent at the present flow: loss ≈ offset + slope · flow. */
    void tangents(double[] flowM3PerS, double[] slope, double[] offsetM) {
        for (int i = 0; i < count; i++) {
            double q = Math.abs(flowM3PerS[link[i]]);
            double rise = 2 * minorCoefficient[i] * q + exponent[i] * coefficient[i] * power(q, exponent[i] - 1);
            if (q < RAMP_M3_PER_S) {
                rise += thresholdM[i] / RAMP_M3_PER_S;
            }
            slope[link[i]] = rise;
            offsetM[link[i]] = Math.signum(flowM3PerS[link[i]]) * (lossOf(i, q) - rise * q);
        }
    }

    private double lossOf(int i, double q) {
        return thresholdM[i] * Math.min(1, q / RAMP_M3_PER_S)
                + (minorCoefficient[i] * q + coefficient[i] * power(q, exponent[i] - 1)) * q;
    }

    private static double power(double base, double power) {
        if (power == 1) {
            return base;
        }
        if (power == FlowPower.EXPONENT) {
            return FlowPower.of(base);
        }
        return StrictMath.pow(power < 0 ? Math.max(base, RAMP_M3_PER_S) : base, power);
    }

    private int entry(int ofLink) {
        if (entryOf[ofLink] == NONE) {
            grow();
            link[count] = ofLink;
            exponent[count] = 2;
            entryOf[ofLink] = count++;
        }
        return entryOf[ofLink];
    }

    private void grow() {
        if (count == link.length) {
            int size = Math.max(4, 2 * count);
            link = Arrays.copyOf(link, size);
            minorCoefficient = Arrays.copyOf(minorCoefficient, size);
            thresholdM = Arrays.copyOf(thresholdM, size);
            coefficient = Arrays.copyOf(coefficient, size);
            exponent = Arrays.copyOf(exponent, size);
        }
    }
}
