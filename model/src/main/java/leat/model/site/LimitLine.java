package leat.model.site;

import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.LineId;

/** A line that no trench may cross: a setback or the line to a neighbour inside the survey. */
public record LimitLine(LineId id, Kind kind, Polyline line) {

    /** Why the line is there. */
    public enum Kind {
        SETBACK,
        NEIGHBOUR
    }

    public LimitLine {
        Require.present("limit line", "id", id);
        Require.present("limit line " + id, "kind", kind);
        Require.present("limit line " + id, "line", line);
    }
}
