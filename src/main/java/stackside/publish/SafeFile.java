package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import stackside.source.SizeLimit;

/**
 * A single file that is replaced whole or not at all and held by one run at a time. Its old bytes
 * stay in place until the new ones have reached the disk.
 */
public final class SafeFile implements AutoCloseable {
  private static final String NEW = ".stackside-new";

  private final Disk disk;
  private final Path file;
  private final Path staged;
  private final Closeable lock;

  private SafeFile(Disk disk, Path file, Path staged, Closeable lock) {
    this.disk = disk;
    this.file = file;
    this.staged = staged;
    this.lock = lock;
  }

  /**
   * Takes the file for this run. It need not exist yet.
   *
   * @throws PublishFailure if another run holds it, or if the disk refuses
   */
  public static SafeFile hold(Disk disk, Path given) throws PublishFailure {
    Path file = given.toAbsolutePath().normalize();
    String name = Objects.requireNonNull(file.getFileName()).toString();
    try {
      Closeable lock =
          disk.lock(Neighbours.lockOf(file)).orElseThrow(() -> PublishFailure.busy(file));
      return new SafeFile(disk, file, file.resolveSibling("." + name + NEW), lock);
    } catch (PublishFailure e) {
      throw e;
    } catch (IOException e) {
      throw PublishFailure.disk(e, file, "Nothing was changed");
    }
  }

  /** Replaces the contents of the file. */
  public void replace(byte[] bytes) throws PublishFailure {
    try {
      Path folder = Objects.requireNonNull(file.getParent());
      Neighbours.createFolders(disk, folder);
      if (disk.at(staged) != Disk.Entry.ABSENT) {
        disk.delete(staged);
      }
      disk.write(staged, bytes);
      disk.move(staged, file);
      disk.flush(folder);
    } catch (IOException e) {
      throw PublishFailure.disk(e, file, state(e, bytes));
    }
  }

  /** What the file holds after a failure; nothing half written stays beside it. */
  private String state(IOException failure, byte[] bytes) {
    try {
      if (disk.at(staged) != Disk.Entry.ABSENT) {
        disk.delete(staged);
      }
      boolean written =
          disk.at(file) == Disk.Entry.FILE
              && disk.read(file, SizeLimit.WRITTEN)
                  .filter(there -> Arrays.equals(there, bytes))
                  .isPresent();
      return written ? "All of what is new stands in it" : "It holds what it held before";
    } catch (IOException e) {
      failure.addSuppressed(e);
      return "It holds what it held before, or all of what is new; the next run shows which";
    }
  }

  /**
   * Writes a file whose name follows from what it holds, so that whatever stands there under that
   * name is either right or damaged, and nobody needs to hold it.
   */
  public static void keep(Disk disk, Path file, byte[] bytes) throws PublishFailure {
    new SafeFile(disk, file, file.resolveSibling("." + file.getFileName() + NEW), () -> {})
        .replace(bytes);
  }

  @Override
  public void close() throws IOException {
    lock.close();
  }
}
