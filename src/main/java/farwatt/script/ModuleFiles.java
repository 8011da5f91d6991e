package farwatt.script;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AccessMode;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.graalvm.polyglot.io.FileSystem;

/**
 * All the files that a script can see: modules ending in .js or .mjs below its own folder, to read. Links that lead out
 * of the folder lead nowhere.
 */
final class ModuleFiles implements FileSystem {
    private static final long MOST_BYTES = 4 << 20;
    private static final Path NOWHERE = Path.of("/");

    private final Optional<Path> folder;

    /** @param folder its real path; empty for a script that has none */
    ModuleFiles(Optional<Path> folder) {
        this.folder = folder;
    }

    private Path allowed(Path path) throws IOException {
        Path root = folder.orElseThrow(() -> denied(path));
        Path whole = root.resolve(path).normalize();
        if (!whole.startsWith(root)) {
            throw denied(path);
        }
        Path real = whole.toRealPath();
        String name = real.toString();
        boolean module = name.endsWith(".js") || name.endsWith(".mjs");
        if (!real.startsWith(root) || !module || !Files.isRegularFile(real) || Files.size(real) > MOST_BYTES) {
            throw denied(path);
        }
        return real;
    }

    private static AccessDeniedException denied(Path path) {
        return new AccessDeniedException(String.valueOf(path.getFileName()));
    }

    @Override
    public Path parsePath(URI uri) {
        return Path.of(uri);
    }

    @Override
    public Path parsePath(String path) {
        return Path.of(path);
    }

    @Override
    public void checkAccess(Path path, Set<? extends AccessMode> modes, LinkOption... options) throws IOException {
        if (modes.contains(AccessMode.WRITE) || modes.contains(AccessMode.EXECUTE)) {
            throw denied(path);
        }
        allowed(path);
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        if (options.stream().anyMatch(option -> option != StandardOpenOption.READ)) {
            throw denied(path);
        }
        return Files.newByteChannel(allowed(path), Set.of(StandardOpenOption.READ));
    }

    @Override
    public Path toAbsolutePath(Path path) {
        return folder.orElse(NOWHERE).resolve(path).normalize();
    }

    @Override
    public Path toRealPath(Path path, LinkOption... options) throws IOException {
        return allowed(path);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return Files.readAttributes(allowed(path), attributes, options);
    }

    @Override
    public void createDirectory(Path path, FileAttribute<?>... attributes) throws IOException {
        throw denied(path);
    }

    @Override
    public void delete(Path path) throws IOException {
        throw denied(path);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path path, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        throw new NoSuchFileException(String.valueOf(path.getFileName()));
    }
}
