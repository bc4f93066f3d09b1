package leat.model.finding;

import leat.model.fault.Require;

/** Why a stage left something undone or did it in a certain way. */
public record Reason(Subject subject, String text) {

    public Reason {
        Require.present("reason", "subject", subject);
        Require.present("reason", "text", text);
    }
}
