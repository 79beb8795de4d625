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
 * @param previous where the earlier tree is kept whole during the swap
 * @param discarded where a tree is moved to be deleted
 * @param lock the file that only one run at a time may lock; it is never deleted
 */
record Neighbours(Path target, Path staged, Path previous, Path discarded, Path lock) {

  static Neighbours of(Path folder) throws PublishFailure {
    Path target = folder.toAbsolutePath().normalize();
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
        target.resolveSibling("." + name + ".stackside-lock"));
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
