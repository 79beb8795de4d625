package stackside.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import stackside.render.OutputFile;

/**
 * Creates a folder once, with all its files or not at all. From then on it belongs to its owner.
 */
public final class NewFolder {
  private NewFolder() {}

  /**
   * Creates the folder.
   *
   * @throws PublishFailure if something exists there already, or if the disk refuses
   */
  public static void create(Disk disk, Path folder, Collection<OutputFile> files)
      throws PublishFailure {
    Neighbours names = Neighbours.of(disk, folder);
    Tree staged = new Tree(disk, names.staged());
    try {
      refuseWhatStandsThere(new Tree(disk, names.target()));
      refuseWhatStandsThere(staged);
      stage(disk, staged.root(), FileTree.of(files));
      if (!new Tree(disk, names.target()).isAbsent()) {
        disk.delete(names.target());
      }
      disk.move(staged.root(), names.target());
      disk.flush(names.parent());
    } catch (PublishFailure e) {
      throw e;
    } catch (IOException e) {
      throw PublishFailure.disk(
          e, names.target(), "The unfinished files are in " + staged.root() + "; delete them");
    }
  }

  private static void refuseWhatStandsThere(Tree tree) throws IOException {
    if (!tree.isAbsent() && !tree.isEmptyFolder()) {
      throw PublishFailure.notOurs(
          tree.root() + " is not empty and was left unchanged; name a new folder");
    }
  }

  private static void stage(Disk disk, Path root, FileTree tree) throws IOException {
    Neighbours.createFolders(disk, root);
    for (String folder : tree.folders()) {
      disk.createFolder(root.resolve(folder));
    }
    for (OutputFile file : tree.files().values()) {
      disk.write(root.resolve(file.path()), file.bytes());
    }
  }
}
