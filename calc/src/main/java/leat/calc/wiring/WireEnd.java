package leat.calc.wiring;

import leat.model.geometry.Point;
import leat.model.id.WireEndId;
import leat.model.site.Phase;

/** What a wire may start or end at. */
record WireEnd(WireEndId id, Point at, Phase phase) {}
