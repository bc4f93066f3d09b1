package leat.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("law")
class YardFileTest {

    private static final Yard YARD = FirstLawn.yardInFeet();

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("lawn.yard.json");
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(one -> one.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatWasSavedIsLoadedAgainAndNothingElseIsLeft() throws IOException {
        YardFile.save(file(), YARD);
        assertEquals(YARD, YardFile.load(file()));
        YardFile.save(file(), YARD.units(UnitSystem.METRIC));
        assertEquals(FirstLawn.yardInMetres(), YardFile.load(file()));
        assertEquals(List.of("lawn.yard.json"), names());
        assertEquals(
                YARD.water().heads(), YardFile.loadSite(file()).yard().water().heads());
    }

    @Test
    void everybodyMayReadANewFileAsTheSystemHasIt() throws IOException {
        YardFile.save(file(), YARD);
        Path plain = Files.createFile(folder.resolve("plain"));
        assertEquals(Files.getPosixFilePermissions(plain), Files.getPosixFilePermissions(file()));
    }

    @Test
    void linksAndPermissionsStay() throws IOException {
        YardFile.save(file(), YARD);
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-rw----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.yard.json"), Path.of("lawn.yard.json"));
        YardFile.save(link, FirstLawn.yardInMetres());
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(FirstLawn.yardInMetres(), YardFile.load(file()));
        assertEquals("rw-rw----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
    }

    @Test
    void aLinkToNothingYetIsFollowed() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.yard.json"), Path.of("lawn.yard.json"));
        YardFile.save(link, YARD);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(YARD, YardFile.load(file()));
    }

    @Test
    void aYardThatCouldNotBeReadAgainIsNotSaved() throws IOException {
        YardFile.save(file(), YARD);
        byte[] before = Files.readAllBytes(file());
        Yard other = new Yard(
                YARD.name(),
                YARD.units(),
                "leat-0",
                YARD.terrain(),
                YARD.water(),
                YARD.power(),
                YARD.trenches(),
                YARD.watering(),
                YARD.costs(),
                YARD.temporary(),
                YARD.planned(),
                YARD.additions());
        var refused = assertThrows(DocumentException.class, () -> YardFile.save(file(), other));
        assertEquals(
                file()
                        + ": was not saved, for it could not be read again: lawn.yard.json, line 4, column 14 (/edition):"
                        + " standing tables: edition is 'leat-0'; it must be one that this version has: leat-1; perhaps"
                        + " 'leat-1'",
                refused.getMessage());
        assertArrayEquals(before, Files.readAllBytes(file()));
        assertEquals(List.of("lawn.yard.json"), names());
    }

    @Test
    void aPlaceThatCannotHoldAFile() throws IOException {
        saveRefused(folder.resolve("none").resolve("a.yard.json"), "was not saved: there is no such file or folder");
        saveRefused(folder, "was not saved: it is a folder");
        assertEquals(List.of(), names());
    }

    private static void saveRefused(Path path, String message) {
        var refused = assertThrows(DocumentException.class, () -> YardFile.save(path, YARD));
        assertEquals(path + ": " + message, refused.getMessage());
    }

    @Test
    void aFileThatIsMissingOrAFolder() {
        var missing = assertThrows(DocumentException.class, () -> YardFile.load(file()));
        assertEquals(file() + ": cannot be read: there is no such file or folder", missing.getMessage());
        var aFolder = assertThrows(DocumentException.class, () -> YardFile.load(folder));
        assertEquals(folder + ": is a folder; it must be a file", aFolder.getMessage());
    }

    private void loadRefused(byte[] bytes, String message) throws IOException {
        Files.write(file(), bytes);
        var refused = assertThrows(DocumentException.class, () -> YardFile.load(file()));
        assertEquals("lawn.yard.json: " + message, refused.getMessage());
    }

    @Test
    void otherEncodings() throws IOException {
        String text = YardDocument.write(YARD);
        loadRefused(
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
                "the file is text in UTF-16; it must be saved as UTF-8");
        loadRefused(text.getBytes(StandardCharsets.UTF_16), "the file is text in UTF-16; it must be saved as UTF-8");
        loadRefused(
                text.replace("First", "Größte").getBytes(StandardCharsets.ISO_8859_1),
                "the file is no text: byte 80 is no UTF-8; it must be JSON in UTF-8");
    }

    @Test
    void aMarkOfTheEncodingIsPassedOver() throws IOException {
        Files.writeString(file(), "\uFEFF" + YardDocument.write(YARD));
        assertEquals(YARD, YardFile.load(file()));
    }

    @Test
    void aBinaryFile() throws IOException {
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13};
        loadRefused(picture, "the file is no text: byte 1 is no UTF-8; it must be JSON in UTF-8");
    }

    @Test
    void anEmptyFile() throws IOException {
        loadRefused(new byte[0], "the file is empty; it must be a document of a yard");
        assertFalse(Files.size(file()) > 0);
    }
}
