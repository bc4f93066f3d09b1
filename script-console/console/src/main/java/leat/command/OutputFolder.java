package leat.command;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.regex.Pattern;
import leat.model.fault.LeatException;

/**
 * The one place that writes output. All files are first written beside their targets and forced to the disk; only when
 * each of them is there whole are they moved into place, replacing older ones of the same name. Whatever goes wrong
 * before that leaves the folder as it was. Nothing else in the folder is ever touched.
 */
final class OutputFolder {

    /** Plain names in at most a few folders: what reports are made of, and nothing that leads elsewhere. */
    private static final Pattern NAME =
            Pattern.compile("[\\p{L}\\p{N}_][\\p{L}\\p{N}_ .-]*(/[\\p{L}\\p{N}_][\\p{L}\\p{N}_ .-]*)*");

    private final Path folder;

    OutputFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes the files, keyed by their names in the folder; the folder is made if it is missing.
     *
     * @throws LeatException if the folder cannot be written to
     */
    void write(SortedMap<String, byte[]> files) {
        Map<Path, Path> written = new LinkedHashMap<>();
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path target = target(file.getKey());
                written.put(target, writeBeside(target, file.getValue()));
            }
            for (Map.Entry<Path, Path> file : written.entrySet()) {
                Files.move(file.getValue(), file.getKey(), StandardCopyOption.ATOMIC_MOVE);
            }
            written.keySet().stream().map(Path::getParent).distinct().forEach(OutputFolder::force);
        } catch (IOException failure) {
            throw new LeatException(folder + " cannot be written to: " + reason(failure), failure);
        } finally {
            written.values().forEach(OutputFolder::discard);
        }
    }

    private Path target(String name) throws IOException {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("no name for an output file: " + name);
        }
        Path target = folder.resolve(name);
        Files.createDirectories(target.getParent());
        if (Files.isDirectory(target)) {
            throw new IOException(target + " is a folder");
        }
        // A link to a file stays a link: the file it leads to is replaced.
        return Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
    }

    private static Path writeBeside(Path target, byte[] bytes) throws IOException {
        Path beside = createBeside(target);
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        } catch (IOException failure) {
            discard(beside);
            throw failure;
        }
        return beside;
    }

    /** A new file with the permissions that the user's files have; one of Java's temporary files would be private. */
    private static Path createBeside(Path target) throws IOException {
        for (int number = 1; ; number++) {
            Path beside = target.resolveSibling("." + target.getFileName() + "." + number + ".tmp");
            try {
                return Files.createFile(beside);
            } catch (FileAlreadyExistsException taken) {
                if (number == 1_000) {
                    throw taken;
                }
            }
        }
    }

    private static void discard(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException stuck) {
            // one hidden file too many; the failure that led here is what the user should hear of
        }
    }

    /** Makes the moves themselves last through a power cut, where the platform can. */
    private static void force(Path parent) {
        try (FileChannel channel = FileChannel.open(parent, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // not possible on every platform, and the files themselves are safe
        }
    }

    private static String reason(IOException failure) {
        if (failure instanceof java.nio.file.AccessDeniedException) {
            return "its permissions do not allow it";
        }
        if (failure instanceof FileAlreadyExistsException exists) {
            return exists.getFile() + " is there already and is no folder";
        }
        return String.valueOf(failure.getMessage());
    }
}
