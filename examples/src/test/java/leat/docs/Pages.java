package leat.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds pages of the project. */
final class Pages {

    private Pages() {}

    /** The text of a page, named from the folder of the project. */
    static String read(String page) {
        try {
            return Files.readString(root().resolve(page));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The folder of the whole project; tests start in the folder of their module. */
    static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("docs")) || !Files.exists(folder.resolve("model/pom.xml"))) {
            folder = folder.getParent();
        }
        return folder;
    }
}
