package leat.calc.hydraulics;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.quantity.Flow;
import leat.model.quantity.Pressure;

/**
 * A zone while it runs alone.
 *
 * @param flow   that all of it draws; 0 unless solved
 * @param supply pressure that is left at the outlet of the source; 0 unless solved
 * @param heads  empty unless solved
 * @param pipes  those that carry its water, from the source on; empty unless solved
 */
public record ZoneRun(
        RunStatus status,
        Flow flow,
        Pressure supply,
        SortedMap<HeadId, HeadPressure> heads,
        SortedMap<PipeId, PipeLoad> pipes) {

    public ZoneRun {
        Require.present("zone run", "status", status);
        Require.present("zone run", "flow", flow);
        Require.present("zone run", "supply", supply);
        heads = Collections.unmodifiableSortedMap(new TreeMap<>(heads));
        pipes = Collections.unmodifiableSortedMap(new TreeMap<>(pipes));
    }

    /** A run without figures. */
    static ZoneRun without(RunStatus status) {
        return new ZoneRun(
                status, Flow.ZERO, Pressure.ZERO, Collections.emptySortedMap(), Collections.emptySortedMap());
    }
}
