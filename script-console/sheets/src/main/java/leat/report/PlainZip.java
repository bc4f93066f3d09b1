package leat.report;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Writes a packed file anew so that the same content gives the same bytes: entries not compressed, all of one date, and no
 * date of creation inside. fastexcel 0.20.2 writes the moment of writing into {@code docProps/core.xml} and gives no way
 * to set it; try without this when it does.
 */
final class PlainZip {

    private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

    private PlainZip() {}

    static byte[] rewritten(byte[] packed) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(packed));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] content = in.readAllBytes();
                write(out, entry.getName(), entry.getName().equals("docProps/core.xml") ? undated(content) : content);
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] undated(byte[] content) {
        return new String(content, StandardCharsets.UTF_8)
                .replaceAll("<dcterms:created[^>]*>[^<]*</dcterms:created>", "")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static void write(ZipOutputStream out, String name, byte[] content) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(sum.getValue());
        entry.setTimeLocal(NO_DATE);
        out.putNextEntry(entry);
        out.write(content);
        out.closeEntry();
    }
}
