package leat.model.id;

import java.util.Locale;

/**
 * The name of a thing in the plan: what the user wrote, unique among its kind. Ids are sorted by kind, then in natural
 * order, so that R2 stands before R10.
 */
public sealed interface Id extends Comparable<Id>
        permits UpstreamId,
                LaidId,
                WireEndId,
                CircuitId,
                BackflowId,
                ZoneId,
                HeadId,
                BibId,
                SurfaceId,
                ObstacleId,
                ServiceId,
                DigZoneId,
                LineId,
                SegmentId {

    String name();

    /** The trade's word for what is named, such as {@code head}. */
    String kind();

    /** Kind and name, the kind left out where the name says it: {@code zone front}, but {@code zone-3}. */
    default String title() {
        String word = kind().split(" ", 2)[0];
        return name().toLowerCase(Locale.ROOT).startsWith(word) ? name() : kind() + " " + name();
    }

    @Override
    default int compareTo(Id other) {
        int byKind = kind().compareTo(other.kind());
        return byKind != 0 ? byKind : NaturalOrder.compare(name(), other.name());
    }
}
