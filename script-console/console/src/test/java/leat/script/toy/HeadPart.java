package leat.script.toy;

import java.util.Optional;

/** An unfinished part with fluent setters. */
public final class HeadPart {

    private final String name;
    private final Length radius;
    private final Urgency urgency;

    HeadPart(String name, Length radius, Urgency urgency) {
        this.name = name;
        this.radius = radius;
        this.urgency = urgency;
    }

    public HeadPart radius(Length least, Length most) {
        return new HeadPart(name, most, urgency);
    }

    public HeadPart radius(Length same) {
        return new HeadPart(name, same, urgency);
    }

    public HeadPart urgency(Urgency newUrgency) {
        return new HeadPart(name, radius, newUrgency);
    }

    public Head done() {
        return new Head(new HeadId(name), radius, urgency, Optional.empty());
    }
}
