package leat.model.finding;

import leat.model.fault.Require;

/**
 * Where a figure or a limit comes from.
 *
 * @param text the source as a reader can look it up
 */
public record Citation(String text, Standing standing) {

    /** For limits that a user of the yard stated. */
    public static final Citation OF_THE_YARD = new Citation("the yard document", Standing.STATED);

    public Citation {
        Require.present("citation", "text", text);
        Require.present("citation", "standing", standing);
    }

    @Override
    public String toString() {
        return text.equals(standing.label()) ? text : text + " (" + standing.label() + ")";
    }
}
