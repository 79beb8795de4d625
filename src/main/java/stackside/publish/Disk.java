package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stackside.source.SizeLimit;

/**
 * The file operations that publishing uses, one method each. {@link LocalDisk} performs them. Tests
 * replace it and make each operation fail in turn.
 */
public interface Disk {

  /** What exists at a path. Links are never followed. */
  enum Entry {
    ABSENT,
    FILE,
    FOLDER,
    OTHER
  }

  Entry at(Path path) throws IOException;

  /** The entries of a folder, sorted by name. */
  List<Path> list(Path folder) throws IOException;

  /** The bytes of a file; absent if it is larger than the limit. */
  Optional<byte[]> read(Path file, SizeLimit limit) throws IOException;

  void createFolder(Path folder) throws IOException;

  /** Writes a new file. Its bytes have reached the disk when this returns. */
  void write(Path file, byte[] bytes) throws IOException;

  /** Gives a file a second name; fails if the file system cannot. */
  void link(Path existing, Path second) throws IOException;

  /** Renames in one step. A file may replace a file; a folder needs a free name. */
  void move(Path from, Path to) throws IOException;

  /** Deletes a file, a link or an empty folder. */
  void delete(Path path) throws IOException;

  /** Makes the names in a folder reach the disk, if the system supports it. */
  void flush(Path folder) throws IOException;

  /** Where a link leads to in the end. */
  Path real(Path link) throws IOException;

  /**
   * Takes the lock that a file stands for, until it is closed; absent if another holds it. The file
   * goes with the lock.
   */
  Optional<Closeable> lock(Path file) throws IOException;
}
