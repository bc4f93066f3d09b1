package leat.model.plan;

import leat.model.fault.Require;
import leat.model.id.Id;

/**
 * How something of this year's works does for a while without a thing that comes later.
 *
 * @param subject     kind and name of what does without, such as {@code controller garden}; plans may change, so it need
 *     not be there any more
 * @param arrangement such as {@code hung on a post by the gate until the summer house stands}
 */
public record Temporary(String subject, String arrangement) {

    public Temporary {
        Require.sentence("temporary arrangement", "subject", subject);
        Require.sentence("temporary arrangement for " + subject, "arrangement", arrangement);
    }

    /** Whether it is for the thing of that id. */
    public boolean isFor(Id id) {
        return subject.equals(subjectOf(id));
    }

    static String subjectOf(Id id) {
        return id.kind() + " " + id.name();
    }
}
