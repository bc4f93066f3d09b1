package leat.script;

import org.jspecify.annotations.Nullable;

/** What the class loader of a Java session's snippets is besides: the way from a snippet to its session. */
public interface JavaDoor {

    /** The functions that the forwarding methods of the session call. */
    SessionFunctions functions();

    /** Takes a value out of the snippets. */
    void hand(@Nullable Object value);

    /** The value handed last. */
    @Nullable
    Object handed();
}
