package leat.console;

import java.util.SortedMap;

/** Where a console's words and files go. */
public interface Outlet {

    /** Something that was asked for; may hold several lines. */
    void result(String text);

    /** Something that the user should know besides, such as a mistake. */
    void message(String text);

    /** How far a long calculation is; for a person only. */
    void progress(double fraction, String what);

    /** No calculation is running any more. */
    void clearProgress();

    /** Keeps the files of a report. */
    void write(SortedMap<String, byte[]> files);

    /** The text in the colour of what must be mended; as it is where colours are not wanted. */
    String red(String text);

    /** The text in the colour of what should be looked at; as it is where colours are not wanted. */
    String yellow(String text);
}
