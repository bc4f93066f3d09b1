package leat.calc.sizing;

import leat.model.fault.Require;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;

/**
 * What sizes are chosen for. The greatest velocity is the rule {@code hydraulics.velocity}.
 *
 * @param fittings    share of the friction that fittings are taken to cost on top of it; 0 or more, default 20 %, common
 *                    practice, no source. The hydraulics count each fitting
 * @param bibPressure that a hose bib shall have while it runs; default 20 psi, common practice, no source
 */
public record SizingParameters(Ratio fittings, Pressure bibPressure) {

    public SizingParameters {
        Require.atLeast("sizing", "fittings", fittings, Ratio.ZERO);
        Require.atLeast("sizing", "bibPressure", bibPressure, Pressure.ZERO);
    }

    public static SizingParameters defaults() {
        return new SizingParameters(Ratio.percent(20), Pressure.psi(20));
    }

    public SizingParameters withFittings(Ratio share) {
        return new SizingParameters(share, bibPressure);
    }

    public SizingParameters withBibPressure(Pressure wanted) {
        return new SizingParameters(fittings, wanted);
    }
}
