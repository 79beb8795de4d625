package stackside.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

/**
 * The names that publishing uses beside an output folder. They are on the same file system as the
 * folder, so that one rename moves a whole tree.
 *
 * @param target the output folder
 * @param staged where the next tree is built
 * @param previous where the earlier tree stands whole during the swap
 * @param discarded where a tree goes to be deleted
 * @param lock the file that one run at a time may lock
 */
record Neighbours(Path target, Path staged, Path previous, Path discarded, Path lock) {

  private static final String LOCK = ".stackside-lock";

  /** A folder that is a link is the folder that it leads to. */
  static Neighbours of(Disk disk, Path folder) throws PublishFailure {
    Path target = real(disk, folder.toAbsolutePath().normalize());
    if (target.getFileName() == null) {
      throw PublishFailure.notOurs(
          target + " is the root of a disk; name a folder that Stackside may create");
    }
    String name = target.getFileName().toString();
    return new Neighbours(
        target,
        target.resolveSibling("." + name + ".stackside-new"),
        target.resolveSibling(name + ".stackside-previous"),
        target.resolveSibling("." + name + ".stackside-discarded"),
        target.resolveSibling("." + name + LOCK));
  }

  private static Path real(Disk disk, Path target) throws PublishFailure {
    try {
      return disk.at(target) == Disk.Entry.OTHER ? disk.real(target) : target;
    } catch (IOException e) {
      throw PublishFailure.disk(e, target, "Nothing was changed");
    }
  }

  /** Whether a file of this name is a lock of ours that a killed run left behind. */
  static boolean isLock(String name) {
    return name.startsWith(".") && name.endsWith(LOCK);
  }

  /** The lock of a file. */
  static Path lockOf(Path file) {
    return file.resolveSibling("." + file.getFileName() + LOCK);
  }

  Path parent() {
    return Objects.requireNonNull(target.getParent());
  }

  /** Creates a folder and any missing parents. */
  static void createFolders(Disk disk, Path folder) throws IOException {
    Path parent = folder.getParent();
    if (parent != null && disk.at(folder) == Disk.Entry.ABSENT) {
      createFolders(disk, parent);
      disk.createFolder(folder);
    }
  }
}
