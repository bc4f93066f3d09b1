package leat.calc.hydraulics;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.id.PipeId;
import leat.model.quantity.Pressure;

/**
 * A hose bib open alone, drawing the flow that it is planned for.
 *
 * @param pressure at the bib; negative if the supply cannot give that flow, 0 unless solved
 * @param supply   pressure that is left at the outlet of the source; 0 unless solved
 * @param pipes    those that carry its water; empty unless solved
 */
public record BibRun(RunStatus status, Pressure pressure, Pressure supply, SortedMap<PipeId, PipeLoad> pipes) {

    public BibRun {
        Require.present("bib run", "status", status);
        Require.present("bib run", "pressure", pressure);
        Require.present("bib run", "supply", supply);
        pipes = Collections.unmodifiableSortedMap(new TreeMap<>(pipes));
    }

    /** A run without figures. */
    static BibRun without(RunStatus status) {
        return new BibRun(status, Pressure.ZERO, Pressure.ZERO, Collections.emptySortedMap());
    }
}
