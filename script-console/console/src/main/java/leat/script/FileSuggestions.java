package leat.script;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leat.script.ScriptSession.Suggestion;
import leat.script.ScriptSession.Suggestions;

/** Names of files, suggested within quotes. */
final class FileSuggestions {

    private FileSuggestions() {}

    /** What fits the text between an open quote and the cursor; nothing if no quote is open there. */
    static Optional<Suggestions> at(String text, int cursor, ScriptFolder folder) {
        int quote = openQuote(text, cursor);
        if (quote < 0) {
            return Optional.empty();
        }
        String typed = text.substring(quote + 1, cursor);
        int name = typed.lastIndexOf('/') + 1;
        List<Suggestion> found = new ArrayList<>();
        for (Path file : filesIn(folder, typed.substring(0, name))) {
            String fileName = file.getFileName().toString();
            boolean isFolder = Files.isDirectory(file);
            if (fileName.startsWith(typed.substring(name)) && !fileName.startsWith(".")) {
                String end = isFolder ? "/" : text.substring(quote, quote + 1);
                found.add(new Suggestion(fileName + end, isFolder ? fileName + "/" : fileName));
            }
        }
        return Optional.of(new Suggestions(quote + 1 + name, found));
    }

    private static List<Path> filesIn(ScriptFolder folder, String subfolder) {
        try (Stream<Path> files = Files.list(folder.real(Path.of(subfolder)))) {
            return files.sorted().toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /** The quote that is still open at the cursor, looking at its line only; below 0 for none. */
    private static int openQuote(String text, int cursor) {
        int open = -1;
        for (int at = text.lastIndexOf('\n', cursor - 1) + 1; at < cursor; at++) {
            char c = text.charAt(at);
            if (c == '\\') {
                at++;
            } else if (open < 0 ? c == '"' || c == '\'' : c == text.charAt(open)) {
                open = open < 0 ? at : -1;
            }
        }
        return open;
    }
}
