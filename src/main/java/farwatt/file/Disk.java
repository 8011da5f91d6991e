package farwatt.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** What saving asks of a disk; a seam, since a full or broken one is hard to come by. */
class Disk {
    /** Writes a new file and waits until it is on the disk. */
    void write(Path path, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** Puts a file in the place of another in one step. */
    void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Waits until a folder's entries are on the disk, where that can be asked for. */
    void settle(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows opens no folders; the file itself is safe by now
            return;
        }
    }

    /** Bytes that still fit. */
    long room(Path folder) throws IOException {
        return Files.getFileStore(folder).getUsableSpace();
    }
}
