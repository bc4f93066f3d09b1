package leat.model.plan;

import java.util.List;
import leat.model.fault.Require;

/** Several parts handed over as one, such as the levels of a file. */
public final class GroupPart extends Part {

    private final List<Part> parts;

    GroupPart(List<Part> parts) {
        this.parts = Require.entries("group", "parts", parts);
    }

    @Override
    void addTo(YardDraft draft) {
        parts.forEach(part -> part.addTo(draft));
    }
}
