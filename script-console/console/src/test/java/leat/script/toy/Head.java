package leat.script.toy;

import java.util.Optional;

/** A value with getters and a changed copy. */
public record Head(HeadId id, Length radius, Urgency urgency, Optional<Pressure> pressure) {

    public Head withRadius(Length newRadius) {
        return new Head(id, newRadius, urgency, pressure);
    }
}
