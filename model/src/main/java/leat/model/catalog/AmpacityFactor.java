package leat.model.catalog;

import java.util.OptionalInt;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.power.CodeFamily;
import leat.model.quantity.Ratio;

/**
 * What an ampacity is multiplied by.
 *
 * @param kind      what the range counts
 * @param from      first of the range; empty where it has no start
 * @param to        last of the range; empty where it has no end
 * @param insulation temperature of the insulation that it is for, in °C; empty for any
 */
public record AmpacityFactor(
        CodeFamily family,
        Kind kind,
        OptionalInt from,
        OptionalInt to,
        OptionalInt insulation,
        Ratio factor,
        Citation citation) {

    public AmpacityFactor {
        Require.present("ampacity factor", "family", family);
        Require.present("ampacity factor", "kind", kind);
        Require.present("ampacity factor", "from", from);
        Require.present("ampacity factor", "to", to);
        Require.present("ampacity factor", "insulation", insulation);
        Require.moreThan("ampacity factor", "factor", factor, Ratio.ZERO);
        Require.present("ampacity factor", "citation", citation);
    }

    /** What a factor depends on. */
    public enum Kind {
        /** Conductors that carry current, in one conduit or cable. */
        LOADED_CONDUCTORS,
        /** Temperature around the conductors, in whole °C. */
        AMBIENT
    }

    /** Whether the figure lies in the range; for insulation that it is for. */
    public boolean covers(int figure, int insulationCelsius) {
        return figure >= from.orElse(Integer.MIN_VALUE)
                && figure <= to.orElse(Integer.MAX_VALUE)
                && insulation.orElse(insulationCelsius) == insulationCelsius;
    }
}
