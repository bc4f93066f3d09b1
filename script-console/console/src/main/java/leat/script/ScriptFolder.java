package leat.script;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import leat.model.fault.LeatException;

/**
 * The folder a script stands in, the only place it can read from. A path is taken apart as written, then with all
 * links followed; both must stay inside. Only plain files are opened.
 */
final class ScriptFolder {

    /** Enough for a survey of a hundred thousand points; a larger file is a mistake. */
    private static final long MOST_BYTES = 64L << 20;

    private final Path root;

    private ScriptFolder(Path root) {
        this.root = root;
    }

    /**
     * The folder in which the script stands.
     *
     * @throws LeatException if there is no such folder
     */
    static ScriptFolder of(Path script) {
        try {
            return new ScriptFolder(Objects.requireNonNull(script.getParent()).toRealPath());
        } catch (IOException missing) {
            throw new LeatException("there is no folder " + script.getParent(), missing);
        }
    }

    Path root() {
        return root;
    }

    /** The path as asked for, made absolute, without looking whether anything is there. */
    Path inside(Path asked) throws OutsideFolderException {
        Path path = root.resolve(asked).normalize();
        if (!path.startsWith(root)) {
            throw new OutsideFolderException(asked);
        }
        return path;
    }

    /** The place where the path ends once all links are followed. */
    Path real(Path asked) throws IOException {
        Path real = inside(asked).toRealPath();
        if (!real.startsWith(root)) {
            throw new OutsideFolderException(asked);
        }
        return real;
    }

    /** Opens a plain file for reading. */
    SeekableByteChannel open(Path asked) throws IOException {
        Path real = real(asked);
        if (!Files.isRegularFile(real, LinkOption.NOFOLLOW_LINKS)) {
            throw new NoSuchFileException(asked.toString(), null, "not a plain file");
        }
        // NOFOLLOW: were the file swapped for a link since it was looked at, the opening fails.
        return Files.newByteChannel(real, Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS));
    }

    /**
     * The text of a file named by a script.
     *
     * @throws ScriptMistake if the file is outside, missing, too large or no UTF-8 text
     */
    String read(String name) {
        try (SeekableByteChannel channel = open(Path.of(name))) {
            if (channel.size() > MOST_BYTES) {
                throw new ScriptMistake(name + " is larger than " + (MOST_BYTES >> 20) + " MB", name);
            }
            byte[] bytes = Channels.newInputStream(channel).readAllBytes();
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (OutsideFolderException | InvalidPathException outside) {
            throw new ScriptMistake(name + " is outside the script's folder; only files inside it can be read", name);
        } catch (NoSuchFileException missing) {
            throw new ScriptMistake("there is no file " + name + " in the script's folder" + nearest(name), name);
        } catch (CharacterCodingException noText) {
            throw new ScriptMistake(name + " is not UTF-8 text", name);
        } catch (IOException failure) {
            throw new ScriptMistake(
                    name + " cannot be read: " + failure.getClass().getSimpleName(), name);
        }
    }

    /** "; did you mean X?" if a file of the folder has nearly that name. */
    String nearest(String name) {
        try (Stream<Path> files = Files.list(root)) {
            return Hint.nearest(
                    name.replaceFirst("^\\./", ""),
                    files.map(file -> file.getFileName().toString()).toList());
        } catch (IOException unreadable) {
            return ""; // the message stands without a suggestion
        }
    }

    /** A path that leads out of the folder. */
    static final class OutsideFolderException extends IOException {

        private static final long serialVersionUID = 1L;

        OutsideFolderException(Path asked) {
            super(asked + " is outside the script's folder");
        }
    }
}
