package leat.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leat.launcher.Tree.Outcome;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the launcher builds, and that it passes on what it is given. */
class LauncherTest {

    private static final Path REAL = Path.of("../script-console/bin/leat");

    @TempDir
    private Path folder;

    private Tree tree;

    @BeforeEach
    void plant() throws IOException {
        tree = new Tree(folder, REAL);
    }

    @Test
    void buildsOnceAndSpeaksOfItOnStandardErrorOnly() throws Exception {
        assertEquals(new Outcome(0, "--help+\n", "leat: building\n"), tree.run("--help"));
        assertEquals(new Outcome(0, "--help+\n", ""), tree.run("--help"));
        assertEquals(1, tree.builds());
    }

    @Test
    void passesArgumentsAndExitCode() throws Exception {
        Outcome outcome = tree.run("3", "south wall", "*", "");
        assertEquals(3, outcome.exitCode());
        assertEquals("3|south wall|*|+\n", outcome.out());
    }

    @Test
    void runsThroughALink() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("my leat"), tree.launcher());
        assertEquals("--help+\n", Tree.finish(tree.start(link, "--help")).out());
    }

    @Test
    void buildsAgainAfterAChange() throws Exception {
        tree.run("--help");
        Files.writeString(tree.source(), "class Source { int changed; }");
        tree.run("--help");
        assertEquals(2, tree.builds());
    }

    @Test
    void buildsAgainAfterASourceIsGone() throws Exception {
        tree.run("--help");
        Files.delete(tree.source());
        tree.run("--help");
        assertEquals(2, tree.builds());
    }

    @Test
    void twoAtOnceBuildOnce() throws Exception {
        Process first = tree.start(tree.launcher(), "--help");
        Process second = tree.start(tree.launcher(), "--help");
        assertEquals("--help+\n", Tree.finish(first).out());
        assertEquals("--help+\n", Tree.finish(second).out());
        assertEquals(1, tree.builds());
    }

    @Test
    void aBrokenBuildIsADefectOfOurs() throws Exception {
        tree.breakTheBuild();
        Outcome outcome = tree.run("--help");
        assertEquals(70, outcome.exitCode());
        assertEquals("", outcome.out());
        assertTrue(outcome.err().endsWith("leat: build failed\n"), outcome.err());
    }

    @Test
    void isShort() throws IOException {
        assertTrue(Files.readAllLines(REAL).size() <= 40);
    }
}
