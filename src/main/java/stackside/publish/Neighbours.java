package stackside.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

/**
 * The names beside an output folder that publishing uses, on the same file system as the folder, so
 * that a rename moves a whole tree in one step.
 *
 * @param target the output folder
 * @param staged where the next tree is built
 * @param previous where the earlier tree stands whole during the swap
 * @param discarded where a tree goes to be deleted
 * @param lock the file that one run at a time may lock; it stays
 */
record Neighbours(Path target, Path staged, Path previous, Path discarded, Path lock) {

  static Neighbours of(Path folder) throws PublishFailure {
    Path target = folder.toAbsolutePath().normalize();
    if (target.getFileName() == null) {
      throw PublishFailure.notOurs(
          target + " is the root of a disk; name a folder that Stackside may make");
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

  /** Makes a folder and those above it, as far as they are missing. */
  static void createFolders(Disk disk, Path folder) throws IOException {
    Path parent = folder.getParent();
    if (parent != null && disk.at(folder) == Disk.Entry.ABSENT) {
      createFolders(disk, parent);
      disk.createFolder(folder);
    }
  }
}
