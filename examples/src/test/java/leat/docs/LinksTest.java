package leat.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every relative link in README.md, DEVELOPERS.md and docs leads to a file that is there, and to a heading in it. */
class LinksTest {

    private static final Path ROOT = Pages.root();

    @ParameterizedTest
    @MethodSource
    void allResolve(Path page) {
        assertEquals(List.of(), broken(page), ROOT.relativize(page).toString());
    }

    static List<Path> allResolve() throws IOException {
        try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            return Stream.concat(Stream.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")), docs)
                    .filter(page -> page.toString().endsWith(".md") && Files.exists(page))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "[other](other.md), true",
        "[other](sub/../other.md#second-part-of-2-µm), true",
        "[again](other.md#same-1), true",
        "[marked](other.md#mark), true",
        "[here](#here), true",
        "![picture](other.md), true",
        "[outside](https://example.org/none), true",
        "`[in code](none.md)`, true",
        "[gone](none.md), false",
        "![gone](none.png), false",
        "[gone part](other.md#third), false",
        "[gone part](#there), false",
        "[from the root](/other.md), false",
        "[named]: none.md, false",
        "'<img src=\"none.svg\">', false"
    })
    void brokenLinksAreFound(String line, boolean resolves, @TempDir Path folder) throws IOException {
        Path page = folder.resolve("page.md");
        Files.createDirectory(folder.resolve("sub"));
        Files.writeString(
                folder.resolve("other.md"),
                "# Second `part` of 2 µm!\n## Same\n## Same\n<a id=\"mark\"></a>\n```\n# third\n```\n");
        Files.writeString(page, "# Here\n\n" + line + "\n");
        assertEquals(resolves, broken(page).isEmpty());
    }

    @Test
    void thereIsSomethingToCheck() throws IOException {
        assertFalse(allResolve().isEmpty());
    }

    private static List<String> broken(Path page) {
        return read(page).targets().stream()
                .filter(target -> URI.create(target.replace(' ', '+')).getScheme() == null)
                .flatMap(target -> fault(page, target).stream())
                .toList();
    }

    private static Optional<String> fault(Path page, String target) {
        String path = URLDecoder.decode(target.replaceFirst("#.*", "").replace("+", "%2B"), StandardCharsets.UTF_8);
        String anchor = target.contains("#") ? target.substring(target.indexOf('#') + 1) : "";
        if (path.startsWith("/")) {
            return Optional.of(target + ": starts at the root of a machine");
        }
        Path file = path.isEmpty() ? page : page.resolveSibling(path).normalize();
        if (!Files.exists(file)) {
            return Optional.of(target + ": no such file");
        }
        if (!anchor.isEmpty() && file.toString().endsWith(".md")) {
            Set<String> anchors = read(file).anchors();
            return anchors.contains(URLDecoder.decode(anchor, StandardCharsets.UTF_8))
                    ? Optional.empty()
                    : Optional.of(target + ": no such heading; there are "
                            + anchors.stream().sorted().toList());
        }
        return Optional.empty();
    }

    private static Markdown read(Path page) {
        try {
            return new Markdown(Files.readString(page));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
