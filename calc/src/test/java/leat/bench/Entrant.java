package leat.bench;

/** One way to answer the question of a benchmark. It has prepared itself when it is made. */
public interface Entrant {

    /** Library or method, in a few words joined by hyphens. */
    String name();

    /**
     * The timed work, done anew on each call. It may reuse what was prepared, but may not start from an earlier answer.
     *
     * @return a number that depends on the whole answer, so that no work can be left out
     */
    double solve();

    /** The answer of the last {@link #solve()}; not timed. */
    Answer answer();
}
