package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A single file that is replaced whole or not at all and held by one run at a time. Its old bytes
 * stay in place until the new ones have reached the disk.
 */
public final class SafeFile implements AutoCloseable {
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
          disk.lock(file.resolveSibling("." + name + ".stackside-lock"))
              .orElseThrow(() -> PublishFailure.busy(file));
      return new SafeFile(disk, file, file.resolveSibling("." + name + ".stackside-new"), lock);
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
      throw PublishFailure.disk(e, file, "It holds either the old contents or the new, complete");
    }
  }

  @Override
  public void close() throws IOException {
    lock.close();
  }
}
