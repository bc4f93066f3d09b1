package leat.script.toy;

import leat.model.fault.LeatException;

/** A record that is nothing but a name. */
public record HeadId(String name) implements Comparable<HeadId> {

    public HeadId {
        if (name.isBlank()) {
            throw new LeatException("head id: name is blank");
        }
    }

    @Override
    public int compareTo(HeadId other) {
        return name.compareTo(other.name);
    }
}
