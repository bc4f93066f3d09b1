package leat.calc.digging.internal;

/** Volumes of what is long and has the same section all along. Lengths are level, depths upright. */
public final class Volumes {

    private Volumes() {}

    /**
     * A trench with a flat bottom: (b + s·d)·d·L.
     *
     * @param sideSlope how far each side leans out for each unit of depth; 0 for upright sides
     */
    public static double trenchM3(double lengthM, double bottomM, double depthM, double sideSlope) {
        return (bottomM + sideSlope * depthM) * depthM * lengthM;
    }

    /** A layer of even depth: A·d. */
    public static double layerM3(double areaM2, double depthM) {
        return areaM2 * depthM;
    }

    /** What is round and long: π·D²/4·L. */
    public static double roundM3(double lengthM, double diameterM) {
        return Math.PI * diameterM * diameterM / 4 * lengthM;
    }

    /**
     * A bed around round things beside each other: from so much below them to so much above the thickest, as wide as the
     * trench, less the things themselves.
     */
    public static double bedM3(double lengthM, double widthM, double belowM, double aboveM, double... outsidesM) {
        double thickestM = 0;
        double thingsM3 = 0;
        for (double outsideM : outsidesM) {
            thickestM = Math.max(thickestM, outsideM);
            thingsM3 += roundM3(lengthM, outsideM);
        }
        return layerM3(widthM * lengthM, belowM + thickestM + aboveM) - thingsM3;
    }

    /** The angle of a side above the level, steepest for a slope of 0. */
    public static double sideRad(double sideSlope) {
        return Math.atan2(1, sideSlope);
    }
}
