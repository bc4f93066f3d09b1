package leat.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import leat.model.fault.LeatException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Output appears whole or not at all, and nothing else in the folder is touched. */
@Tag("law")
class OutputFolderTest {

    @TempDir
    Path folder;

    private static SortedMap<String, byte[]> files(String... names) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (String name : names) {
            files.put(name, ("content of " + name).getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void missingFoldersAreMade() throws IOException {
        new OutputFolder(folder.resolve("a/b")).write(files("plan.svg", "dry/plan.svg"));
        assertEquals(List.of("a/b/dry/plan.svg", "a/b/plan.svg"), names());
        assertEquals("content of plan.svg", Files.readString(folder.resolve("a/b/plan.svg")));
    }

    @Test
    void anOlderFileIsReplacedAndAStrangerStays() throws IOException {
        Files.writeString(folder.resolve("plan.svg"), "old");
        Files.writeString(folder.resolve("mine.txt"), "mine");
        new OutputFolder(folder).write(files("plan.svg"));
        assertEquals(List.of("mine.txt", "plan.svg"), names());
        assertEquals("content of plan.svg", Files.readString(folder.resolve("plan.svg")));
        assertEquals("mine", Files.readString(folder.resolve("mine.txt")));
    }

    @Test
    void whenOneFileCannotBeWrittenNoneIs() throws IOException {
        Files.writeString(folder.resolve("heads.csv"), "old");
        Files.createDirectories(folder.resolve("report.html/full"));
        LeatException failure = assertThrows(
                LeatException.class, () -> new OutputFolder(folder).write(files("heads.csv", "report.html")));
        assertTrue(failure.getMessage().endsWith("report.html is a folder"), failure.getMessage());
        assertEquals(List.of("heads.csv"), names());
        assertEquals("old", Files.readString(folder.resolve("heads.csv")));
    }

    @Test
    void aFileInPlaceOfTheFolderIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "a file");
        assertThrows(LeatException.class, () -> new OutputFolder(file).write(files("plan.svg")));
        assertEquals("a file", Files.readString(file));
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path real = Files.writeString(folder.resolve("real.svg"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("plan.svg"), real);
        new OutputFolder(folder).write(files("plan.svg"));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("content of plan.svg", Files.readString(real));
    }

    @Test
    void aFileLeftByAKilledRunIsNotInTheWay() throws IOException {
        Files.writeString(folder.resolve(".plan.svg.1.tmp"), "half");
        new OutputFolder(folder).write(files("plan.svg"));
        assertEquals("content of plan.svg", Files.readString(folder.resolve("plan.svg")));
        assertEquals(List.of(".plan.svg.1.tmp", "plan.svg"), names());
    }

    @Test
    void bytesArriveAsTheyAre() throws IOException {
        byte[] bytes = new byte[300_000];
        new java.util.Random(7).nextBytes(bytes);
        new OutputFolder(folder).write(new TreeMap<>(Map.of("plan.pdf", bytes)));
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("plan.pdf")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../plan.svg", "/plan.svg", "a/../../plan.svg", "", ".", "a//b", ".hidden", "a\u0000b", "a\nb"})
    void namesThatLeadElsewhereAreADefect(String name) {
        assertThrows(IllegalArgumentException.class, () -> new OutputFolder(folder).write(files(name)));
    }
}
