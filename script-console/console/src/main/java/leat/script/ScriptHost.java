package leat.script;

/** What a script's surroundings do for it while it runs. */
public interface ScriptHost {

    /** Shows what {@code print} was given; may hold several lines. */
    void print(String text);

    /** Tells the user something besides what was asked for, such as what a stage left undone. */
    void note(String text);

    /** How far a long calculation has come: a fraction from 0 to 1 and what is being done. */
    void progress(double fraction, String what);
}
