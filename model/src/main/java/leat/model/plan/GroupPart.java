package leat.model.plan;

import java.util.List;

/** Several parts handed over as one, such as the levels of a file. */
public final class GroupPart extends Part {

    private final List<Part> parts;

    GroupPart(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    @Override
    void addTo(YardDraft draft) {
        parts.forEach(part -> part.addTo(draft));
    }
}
