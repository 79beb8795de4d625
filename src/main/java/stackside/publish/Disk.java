package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stackside.source.SizeLimit;

/**
 * The file operations that publishing is made of, one method each. {@link LocalDisk} performs them;
 * tests put another in its place and make every single one fail.
 */
public interface Disk {

  /** What stands at a path. Links are never followed. */
  enum Entry {
    ABSENT,
    FILE,
    FOLDER,
    OTHER
  }

  Entry at(Path path) throws IOException;

  /** What a folder holds, sorted by name. */
  List<Path> list(Path folder) throws IOException;

  /** What a file holds; absent where it is larger than the limit. */
  Optional<byte[]> read(Path file, SizeLimit limit) throws IOException;

  void createFolder(Path folder) throws IOException;

  /** Writes a file that does not exist yet; its bytes have reached the disk on return. */
  void write(Path file, byte[] bytes) throws IOException;

  /** Gives a file a second name; fails where the file system cannot. */
  void link(Path existing, Path second) throws IOException;

  /** Renames in one step. A file may take the place of a file, a folder that of nothing. */
  void move(Path from, Path to) throws IOException;

  /** Deletes a file, a link or an empty folder. */
  void delete(Path path) throws IOException;

  /** Makes the names in a folder reach the disk, where the system can. */
  void flush(Path folder) throws IOException;

  /** Takes the lock that a file stands for, until it is closed; absent if another holds it. */
  Optional<Closeable> lock(Path file) throws IOException;
}
