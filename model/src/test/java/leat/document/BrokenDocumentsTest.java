package leat.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import leat.model.plan.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to the bytes of a document, it is read as a yard or refused in one line of our own words. */
@Tag("law")
class BrokenDocumentsTest {

    private static final String PIECES = "{}[]\",:0123456789-+.eE \n\t\\/truefalsn'ftpsidegm";

    @TempDir
    Path folder;

    @Test
    void randomEditsOfBytes() throws IOException {
        int read = 0;
        int refused = 0;
        byte[][] documents = {
            YardDocument.write(FirstLawn.yardInFeet()).getBytes(StandardCharsets.UTF_8),
            YardDocument.write(RandomYards.of(3)).getBytes(StandardCharsets.UTF_8),
            YardDocument.write(RandomYards.of(10)).getBytes(StandardCharsets.UTF_8)
        };
        for (int seed = 0; seed < 3_000; seed++) {
            var random = new Random(seed);
            byte[] bytes = edited(documents[seed % documents.length], random);
            if (isRead(bytes)) {
                read++;
            } else {
                refused++;
            }
        }
        assertTrue(read > 100 && refused > 1_000, read + " were read, " + refused + " refused");
    }

    private boolean isRead(byte[] bytes) throws IOException {
        Path file = folder.resolve("edited.yard.json");
        Files.write(file, bytes);
        Yard yard;
        try {
            yard = YardFile.load(file);
        } catch (DocumentException e) {
            String message = String.valueOf(e.getMessage());
            assertTrue(message.startsWith("edited.yard.json"), message);
            assertFalse(
                    message.contains("jackson") || message.contains("Exception") || message.contains("\n"), message);
            return false;
        }
        assertEquals(yard, YardDocument.read(YardDocument.write(yard), "edited.yard.json"));
        return true;
    }

    /** One to three edits: a byte changed, put in, taken away, or a passage copied to another place. */
    private static byte[] edited(byte[] document, Random random) {
        byte[] bytes = document;
        for (int edit = random.nextInt(3); edit >= 0; edit--) {
            int at = random.nextInt(bytes.length);
            byte some = random.nextInt(4) == 0
                    ? (byte) random.nextInt(256)
                    : (byte) PIECES.charAt(random.nextInt(PIECES.length()));
            int length = Math.min(random.nextInt(20), bytes.length - at);
            switch (random.nextInt(4)) {
                case 0 -> bytes = spliced(bytes, at, at + 1, new byte[] {some});
                case 1 -> bytes = spliced(bytes, at, at, new byte[] {some});
                case 2 -> bytes = spliced(bytes, at, at + length, new byte[0]);
                default -> {
                    byte[] passage = Arrays.copyOfRange(bytes, at, at + length);
                    int to = random.nextInt(bytes.length);
                    bytes = spliced(bytes, to, to, passage);
                }
            }
        }
        return bytes;
    }

    private static byte[] spliced(byte[] bytes, int from, int to, byte[] piece) {
        byte[] result = new byte[bytes.length - (to - from) + piece.length];
        System.arraycopy(bytes, 0, result, 0, from);
        System.arraycopy(piece, 0, result, from, piece.length);
        System.arraycopy(bytes, to, result, from + piece.length, bytes.length - to);
        return result;
    }
}
