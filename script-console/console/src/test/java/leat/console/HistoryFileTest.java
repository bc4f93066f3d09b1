package leat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Source: XDG Base Directory Specification 0.8 for Linux; for the others common practice, no source. */
@Tag("reference")
class HistoryFileTest {

    private static final Path HOME = Path.of("/home/someone");

    @Test
    void onLinuxItIsAStateOfTheUser() {
        assertEquals(HOME.resolve(".local/state/leat/history-java"), HistoryFile.of("java", "Linux", HOME, Map.of()));
        assertEquals(
                Path.of("/state/leat/history-javascript"),
                HistoryFile.of("javascript", "Linux", HOME, Map.of("XDG_STATE_HOME", "/state")));
    }

    @Test
    void aStateFolderThatIsNotAbsoluteIsPassedOver() {
        assertEquals(
                HOME.resolve(".local/state/leat/history-java"),
                HistoryFile.of("java", "Linux", HOME, Map.of("XDG_STATE_HOME", "state")));
    }

    @Test
    void elsewhereItIsWhereThePlatformKeepsSuchThings() {
        assertEquals(
                HOME.resolve("Library/Application Support/leat/history-java"),
                HistoryFile.of("java", "Mac OS X", HOME, Map.of()));
        assertEquals(
                HOME.resolve("AppData/Local/leat/history-java"), HistoryFile.of("java", "Windows 11", HOME, Map.of()));
    }
}
