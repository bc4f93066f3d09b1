package leat.script;

/** A stretch of a text, from character {@code start} up to but not including {@code end}, to be shown with a message. */
record Spot(CharSequence text, int start, int end) {

    /** A longer line is generated, and showing it would bury the message. */
    private static final int LONGEST_SHOWN = 200;

    /**
     * {@code file:line:column: message}, the line and a caret under the column.
     *
     * @param file the name to show
     * @param word what the caret should point at if it stands in the stretch; else it points at the start
     */
    String show(String file, String word, String message) {
        int offset = offsetOf(word);
        int lineStart = offset;
        while (lineStart > 0 && text.charAt(lineStart - 1) != '\n') {
            lineStart--;
        }
        int lineEnd = offset;
        while (lineEnd < text.length() && text.charAt(lineEnd) != '\n' && text.charAt(lineEnd) != '\r') {
            lineEnd++;
        }
        long line = text.subSequence(0, offset).chars().filter(c -> c == '\n').count() + 1;
        int column = offset - lineStart + 1;
        String head = file + ":" + line + ":" + column + ": " + message;
        String shown = text.subSequence(lineStart, lineEnd).toString();
        if (shown.length() > LONGEST_SHOWN) {
            return head;
        }
        // A tab stays a tab, so that the caret stands under its column at any tab width.
        String indent = shown.substring(0, column - 1).replaceAll("[^\t]", " ");
        return head + "\n  " + shown + "\n  " + indent + "^";
    }

    /** The last place where the word stands as a name of its own: calls in a chain are read from left to right. */
    private int offsetOf(String word) {
        String stretch = text.subSequence(start, end).toString();
        for (int at = word.isEmpty() ? -1 : stretch.lastIndexOf(word);
                at >= 0;
                at = stretch.lastIndexOf(word, at - 1)) {
            int after = at + word.length();
            boolean startsHere = at == 0 || !Character.isJavaIdentifierPart(stretch.charAt(at - 1));
            boolean endsHere = after == stretch.length() || !Character.isJavaIdentifierPart(stretch.charAt(after));
            if (startsHere && endsHere) {
                return start + at;
            }
        }
        return start;
    }
}
