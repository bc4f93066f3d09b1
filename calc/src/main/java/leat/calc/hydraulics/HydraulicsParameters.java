package leat.calc.hydraulics;

/**
 * What counts as a loss, and what is run.
 *
 * @param fittings whether tees, bends and the swing joints under the heads cost pressure; default yes. Without them pressures
 *                 come out some per cent too high
 * @param bibs     whether each hose bib is run alone, too; default yes
 */
public record HydraulicsParameters(boolean fittings, boolean bibs) {

    public static HydraulicsParameters defaults() {
        return new HydraulicsParameters(true, true);
    }

    public HydraulicsParameters withFittings(boolean counted) {
        return new HydraulicsParameters(counted, bibs);
    }

    public HydraulicsParameters withBibs(boolean run) {
        return new HydraulicsParameters(fittings, run);
    }
}
