package leat.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a packed file anew so that the same content gives the same bytes: entries not compressed, all of one date, and no
 * date of creation inside. fastexcel 0.20.2 writes the moment of writing into {@code docProps/core.xml} and gives no way
 * to set it; try without this when it does. Its entries state no sizes where a stream of Java looks for them, so they are
 * found by the directory at the end (PKWARE, .ZIP File Format Specification 6.3, section 4.3).
 */
final class PlainZip {

    private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final int END_LENGTH = 22;
    private static final int ENTRY_LENGTH = 46;
    private static final int LOCAL_LENGTH = 30;

    private PlainZip() {}

    /** @param packed without a comment at its end, and below 4 GB */
    static byte[] rewritten(byte[] packed) throws IOException {
        ByteBuffer in = ByteBuffer.wrap(packed).order(ByteOrder.LITTLE_ENDIAN);
        int end = packed.length - END_LENGTH;
        int entries = in.getShort(end + 10);
        int at = in.getInt(end + 16);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (int i = 0; i < entries; i++) {
                int nameLength = in.getShort(at + 28);
                String name = new String(packed, at + ENTRY_LENGTH, nameLength, StandardCharsets.UTF_8);
                byte[] content = content(packed, in, at);
                write(out, name, name.equals("docProps/core.xml") ? undated(content) : content);
                at += ENTRY_LENGTH + nameLength + in.getShort(at + 30) + in.getShort(at + 32);
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] content(byte[] packed, ByteBuffer in, int entry) throws IOException {
        int packedLength = in.getInt(entry + 20);
        byte[] content = new byte[in.getInt(entry + 24)];
        int local = in.getInt(entry + 42);
        int from = local + LOCAL_LENGTH + in.getShort(local + 26) + in.getShort(local + 28);
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(packed, from, packedLength);
            int length = inflater.inflate(content);
            if (length != content.length) {
                throw new IOException("an entry has " + length + " bytes; it must have " + content.length);
            }
            return content;
        } catch (DataFormatException e) {
            throw new IOException("an entry cannot be unpacked", e);
        } finally {
            inflater.end();
        }
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
