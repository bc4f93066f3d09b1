package leat.script;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Map;
import java.util.Set;
import org.graalvm.polyglot.io.FileSystem;

/** The file system of the script engine: modules inside the script's folder can be read; nothing else is possible. */
final class ConfinedFileSystem implements FileSystem {

    private final ScriptFolder folder;

    ConfinedFileSystem(ScriptFolder folder) {
        this.folder = folder;
    }

    @Override
    public Path parsePath(URI uri) {
        if (!"file".equals(uri.getScheme())) {
            throw new UnsupportedOperationException("only files can be imported");
        }
        return Path.of(uri);
    }

    @Override
    public Path parsePath(String path) {
        return Path.of(path);
    }

    @Override
    public void checkAccess(Path path, Set<? extends AccessMode> modes, LinkOption... options) throws IOException {
        if (modes.contains(AccessMode.WRITE) || modes.contains(AccessMode.EXECUTE)) {
            throw refused();
        }
        folder.real(path);
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        for (OpenOption option : options) {
            if (option != StandardOpenOption.READ && !(option instanceof LinkOption)) {
                throw refused();
            }
        }
        return folder.open(path);
    }

    @Override
    public Path toAbsolutePath(Path path) {
        return folder.root().resolve(path);
    }

    @Override
    public Path toRealPath(Path path, LinkOption... options) throws IOException {
        return folder.real(path);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return Files.readAttributes(folder.real(path), attributes, LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter) {
        throw refused();
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) {
        throw refused();
    }

    @Override
    public void delete(Path path) {
        throw refused();
    }

    private static SecurityException refused() {
        return new SecurityException("a script can only read");
    }
}
