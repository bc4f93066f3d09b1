package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A document that an earlier release wrote. */
@Tag("pinned")
class VersionsTest {

    static String version1() throws IOException {
        try (var stream = VersionsTest.class.getResourceAsStream("version-1.yard.json")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aDocumentOfVersion1IsTheSameYard() throws IOException {
        assertEquals(FirstLawn.yardInFeet(), YardDocument.read(version1(), "old.yard.json"));
    }

    @Test
    void itIsWrittenInTheNewestVersion() throws IOException {
        String text = YardDocument.write(YardDocument.read(version1(), "old.yard.json"));
        assertTrue(text.contains("\"version\": 2"));
        assertTrue(text.contains("\"from\": {\"valve\": \"V1\"}"));
        assertEquals(YardDocument.write(FirstLawn.yardInFeet()), text);
    }

    @Test
    void complaintsSpeakOfTheFileAsItStands() throws IOException {
        refused(
                version1().replace("\"from\": \"valve V1\"", "\"from\": \"V1\""),
                "old.yard.json, line 80, column 21 (/water/laterals/0/pipes/0/from): the text 'V1' cannot stand here; in"
                        + " version 1 it must be text such as 'source street', 'pipe main' or 'valve V1'");
        refused(
                version1().replace("\"soil\"", "\"siol\""),
                "old.yard.json, line 23, column 9 (/terrain/surfaces/0/siol): a surface has no field 'siol'; it must be"
                        + " one of id, kind, outline, holes, watering, soil, planting, phase; perhaps 'soil'");
        refused(
                version1().replace("\"version\": 1", "\"version\": 2"),
                "old.yard.json, line 7, column 3 (/terrain): a document of a yard has no field 'terrain'; it must be one"
                        + " of format, version, edition, name, units, site, water, power, trenches, watering, temporary, costs, planned, additions");
    }

    private static void refused(String text, String message) {
        var refused = assertThrows(DocumentException.class, () -> YardDocument.read(text, "old.yard.json"));
        assertEquals(message, refused.getMessage());
    }
}
