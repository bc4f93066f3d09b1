package leat.calc.phasing;

import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.Id;

/**
 * An end of something of now that waits for something of later.
 *
 * @param id      what ends: a pipe, a valve, a conduit or a cable
 * @param waitsFor what comes later
 * @param at      where the end is, to be found again
 */
public record EarlyEnd(Id id, EarlyEndKind kind, Id waitsFor, Point at) {

    public EarlyEnd {
        Require.present("early end", "id", id);
        Require.present("early end of " + id, "kind", kind);
        Require.present("early end of " + id, "waitsFor", waitsFor);
        Require.present("early end of " + id, "at", at);
    }
}
