package leat.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import leat.model.fault.LeatException;
import leat.model.plan.Site;
import leat.model.plan.Yard;

/** Yards as files, usually named {@code *.yard.json}. A save succeeds as a whole or leaves the old file as it was. */
public final class YardFile {

    private static final long MOST_BYTES = 128L << 20;

    private YardFile() {}

    /** @throws DocumentException if there is no such file, or it holds no yard */
    public static Yard load(Path path) {
        return YardDocument.read(text(path), name(path));
    }

    /**
     * The yard of the file on the standing tables of its edition.
     *
     * @throws DocumentException as {@link #load}, and if the yard names a key or a rule that is not in the tables
     */
    public static Site loadSite(Path path) {
        return YardDocument.readSite(text(path), name(path));
    }

    /**
     * Saves the yard, in place of an older file if there is one. The bytes are first read back and compared, then
     * written beside the target, forced to the disk and moved into its place. Links are followed; an older file's
     * permissions stay.
     *
     * @throws DocumentException if the yard or the place does not allow it; then nothing was changed
     */
    public static void save(Path path, Yard yard) {
        byte[] bytes = checked(path, yard);
        try {
            write(target(path), bytes);
        } catch (IOException e) {
            throw fault(path, "was not saved", e);
        }
    }

    private static String name(Path path) {
        Path last = path.getFileName();
        return last == null ? path.toString() : last.toString();
    }

    // Loading

    private static String text(Path path) {
        try {
            if (Files.isDirectory(path)) {
                throw DocumentException.of(path.toString(), "is a folder; it must be a file", null);
            }
            if (Files.size(path) > MOST_BYTES) {
                throw DocumentException.of(path.toString(), "is larger than any yard; it must be at most 128 MB", null);
            }
            return text(path, Files.readAllBytes(path));
        } catch (IOException e) {
            throw fault(path, "cannot be read", e);
        }
    }

    private static String text(Path path, byte[] bytes) {
        boolean wide = bytes.length > 1 && (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE));
        if (wide) {
            throw DocumentException.of(name(path), "the file is text in UTF-16; it must be saved as UTF-8", null);
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(in)
                    .toString();
        } catch (CharacterCodingException e) {
            throw DocumentException.of(
                    name(path),
                    "the file is no text: byte " + (in.position() + 1) + " is no UTF-8; it must be JSON in UTF-8",
                    e);
        }
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static DocumentException fault(Path path, String what, IOException e) {
        return DocumentException.of(path.toString(), what + ": " + reason(e), e);
    }

    private static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (e instanceof AccessDeniedException) {
            return "its permissions do not allow it";
        }
        String message = e.getMessage();
        return message == null ? "the system gives no reason" : message;
    }

    // Saving

    private static byte[] checked(Path path, Yard yard) {
        byte[] bytes = YardDocument.write(yard).getBytes(StandardCharsets.UTF_8);
        Yard back;
        try {
            back = YardDocument.read(text(path, bytes), name(path));
        } catch (LeatException e) {
            throw DocumentException.of(
                    path.toString(), "was not saved, for it could not be read again: " + e.getMessage(), e);
        }
        if (!back.equals(yard)) {
            throw new IllegalStateException("the yard " + yard.name() + " would be another one when read again");
        }
        return bytes;
    }

    /** Where the bytes go: the end of a chain of links, even if nothing is there yet. */
    private static Path target(Path path) throws IOException {
        if (Files.exists(path)) {
            Path real = path.toRealPath();
            if (Files.isDirectory(real)) {
                throw new IOException("it is a folder");
            }
            if (!Files.isWritable(real)) {
                throw new AccessDeniedException(path.toString()); // the move would not ask
            }
            return real;
        }
        Path here = path.toAbsolutePath();
        for (int links = 0; links < 40 && Files.isSymbolicLink(here); links++) {
            here = here.resolveSibling(Files.readSymbolicLink(here));
        }
        return here;
    }

    private static void write(Path target, byte[] bytes) throws IOException {
        Path beside = createBeside(target);
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            keepPermissions(target, beside);
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
        forceFolder(target.resolveSibling("."));
    }

    /** A new file of our own; not a temporary one of Java's, which nobody but the owner could read. */
    private static Path createBeside(Path target) throws IOException {
        for (int number = 1; ; number++) {
            Path beside = target.resolveSibling("." + target.getFileName() + "." + number + ".tmp");
            try {
                return Files.createFile(beside);
            } catch (FileAlreadyExistsException e) {
                if (number == 1_000) {
                    throw e;
                }
            }
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        if (Files.exists(from) && Files.getFileStore(to).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        }
    }

    /** Makes the move itself last through a power cut, where the platform can. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // not possible on every platform, and the file itself is safe
        }
    }
}
