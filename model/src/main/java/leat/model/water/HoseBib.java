package leat.model.water;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.BibId;
import leat.model.id.PipeId;
import leat.model.quantity.Flow;
import leat.model.site.Phase;

/**
 * A tap for a hose on the always-on main.
 *
 * @param on            the run that feeds it, at the place of the run nearest to it; empty while none is planned
 * @param drawn         flow with the hose open
 * @param vacuumBreaker whether it has one of its own
 */
public record HoseBib(BibId id, Point at, Optional<PipeId> on, Flow drawn, boolean vacuumBreaker, Phase phase) {

    public HoseBib {
        Require.present("hose bib", "id", id);
        Require.present("hose bib " + id, "at", at);
        Require.present("hose bib " + id, "on", on);
        Require.moreThan("hose bib " + id, "drawn", drawn, Flow.ZERO);
        Require.present("hose bib " + id, "phase", phase);
    }

    public HoseBib withOn(Optional<PipeId> newOn) {
        return new HoseBib(id, at, newOn, drawn, vacuumBreaker, phase);
    }
}
