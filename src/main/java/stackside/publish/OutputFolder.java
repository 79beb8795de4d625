package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import stackside.render.OutputFile;
import stackside.source.SizeLimit;

/**
 * A folder of finished files, held exclusively by this run from {@link #hold} to {@link #close}.
 * Its files are replaced all together or not at all. The next tree is built beside the folder and
 * renamed into place; the next run repairs an interrupted swap.
 */
public final class OutputFolder implements AutoCloseable {
  private final Disk disk;
  private final Neighbours names;
  private final Closeable lock;
  private final List<String> notices = new ArrayList<>();

  private OutputFolder(Disk disk, Neighbours names, Closeable lock) {
    this.disk = disk;
    this.names = names;
    this.lock = lock;
  }

  /**
   * Takes the folder for this run. If an earlier run was interrupted, restores the folder first.
   *
   * @throws PublishFailure if another run holds it, if it is not Stackside's, or if the disk
   *     refuses
   */
  public static OutputFolder hold(Disk disk, Path folder) throws PublishFailure {
    Neighbours names = Neighbours.of(disk, folder);
    OutputFolder held = new OutputFolder(disk, names, lock(disk, names));
    try {
      held.restore();
      held.refuseWhatIsNotOurs();
      return held;
    } catch (IOException e) {
      held.close();
      throw held.failure(e);
    }
  }

  private static Closeable lock(Disk disk, Neighbours names) throws PublishFailure {
    try {
      Neighbours.createFolders(disk, names.parent());
      return disk.lock(names.lock()).orElseThrow(() -> PublishFailure.busy(names.target()));
    } catch (PublishFailure e) {
      throw e;
    } catch (IOException e) {
      throw PublishFailure.disk(e, names.target(), "Nothing was changed");
    }
  }

  /**
   * What the user should be told: that the folder was restored, or that leftovers could not be
   * deleted.
   */
  public List<String> notices() {
    return List.copyOf(notices);
  }

  /** The absolute path of the folder. */
  public Path path() {
    return names.target();
  }

  /** The files now in the folder. */
  public SortedMap<String, OutputFile> files() throws PublishFailure {
    try {
      Tree target = tree(names.target());
      return target.isOurs() ? target.files() : Collections.emptySortedMap();
    } catch (IOException e) {
      throw failure(e);
    }
  }

  /** The files that were put there, as they were then; none where nothing was. */
  public FileList written() throws PublishFailure {
    try {
      Tree target = tree(names.target());
      return target.isOurs() ? marker(target).list() : FileList.of(List.of());
    } catch (IOException e) {
      throw failure(e);
    }
  }

  /**
   * Replaces all files of the folder with these.
   *
   * @throws PublishFailure if the disk refuses; the folder is then unchanged, or kept whole where
   *     the message says
   */
  public Replaced replace(Collection<OutputFile> files) throws PublishFailure {
    return stage(files).swap();
  }

  /**
   * Builds the next tree beside the folder and leaves the folder as it is. What goes wrong for lack
   * of room goes wrong here.
   */
  public Staged stage(Collection<OutputFile> files) throws PublishFailure {
    FileTree next = FileTree.of(files);
    try {
      Tree before = tree(names.target());
      Tree.Unchanged kept = before.isOurs() ? before.kept(next.files()) : Tree.Unchanged.NOTHING;
      FileList list = FileList.of(next.files().values());
      if (kept.isAll(next.files().keySet()) && marker(before).list().equals(list)) {
        return () -> new Replaced(kept.paths().size(), 0);
      }
      stage(next, list, kept.paths());
      return () -> swapped(next, kept);
    } catch (IOException e) {
      giveRoomBack(e);
      throw failure(e);
    }
  }

  /** A tree that only has to be put in its place. */
  public interface Staged {
    Replaced swap() throws PublishFailure;
  }

  private Replaced swapped(FileTree next, Tree.Unchanged kept) throws PublishFailure {
    try {
      swap();
    } catch (IOException e) {
      giveRoomBack(e);
      throw failure(e);
    }
    tidy();
    return new Replaced(next.files().size(), next.files().size() - kept.paths().size());
  }

  /** How many files the folder holds now, and how many of them are new or changed. */
  public record Replaced(int files, long changed) {}

  @Override
  public void close() {
    try {
      lock.close();
    } catch (IOException e) {
      notices.add(
          "the lock "
              + names.lock()
              + " could not be released; the system will release it shortly");
    }
  }

  // Staging: if the disk is full, the failure happens here, beside the folder.

  private void stage(FileTree next, FileList list, Set<String> unchanged) throws IOException {
    Path staged = names.staged();
    disk.createFolder(staged);
    disk.write(staged.resolve(Marker.NAME), new Marker(list).bytes());
    for (String folder : next.folders()) {
      disk.createFolder(staged.resolve(folder));
    }
    for (OutputFile file : next.files().values()) {
      if (!unchanged.contains(file.path()) || !linked(file.path())) {
        disk.write(staged.resolve(file.path()), file.bytes());
      }
    }
    for (String folder : next.folders()) {
      disk.flush(staged.resolve(folder));
    }
    disk.flush(staged);
  }

  /**
   * Links an unchanged file instead of copying it, where the disk can, so that it keeps its date.
   */
  private boolean linked(String path) throws IOException {
    Path second = names.staged().resolve(path);
    try {
      disk.link(names.target().resolve(path), second);
      return true;
    } catch (IOException e) {
      if (disk.at(second) != Disk.Entry.ABSENT) {
        disk.delete(second);
      }
      return false;
    }
  }

  /** Frees the space of a half-built tree, so that a full disk does not stay full. */
  private void giveRoomBack(IOException failure) {
    try {
      deleteLeftover(names.staged());
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }

  // Swapping: two renames. Between them the earlier tree is kept whole under its recovery name.

  private void swap() throws IOException {
    try {
      if (tree(names.target()).isEmptyFolder()) {
        disk.delete(names.target());
      } else if (!tree(names.target()).isAbsent()) {
        disk.move(names.target(), names.previous());
        disk.flush(names.parent());
      }
      disk.move(names.staged(), names.target());
      disk.flush(names.parent());
    } catch (IOException e) {
      takeBack(e);
      throw e;
    }
  }

  /** Restores the earlier tree after a failed swap, as far as the disk allows. */
  private void takeBack(IOException failure) {
    try {
      if (tree(names.staged()).isAbsent()) {
        disk.move(names.target(), names.staged());
      }
      if (tree(names.previous()).isOurs() && tree(names.target()).isAbsent()) {
        disk.move(names.previous(), names.target());
      }
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }

  private void tidy() {
    try {
      discardPrevious();
    } catch (IOException e) {
      notices.add(
          "the new files are in place, but the earlier ones could not be deleted from "
              + names.parent()
              + "; the next run tries again");
    }
  }

  /** Renames the tree before deleting it, so that the name holds a whole tree or none. */
  private void discardPrevious() throws IOException {
    if (!tree(names.previous()).isAbsent()) {
      disk.move(names.previous(), names.discarded());
      tree(names.discarded()).delete();
    }
  }

  // Restoring what an earlier run left behind.

  private void restore() throws IOException {
    deleteLeftover(names.staged());
    deleteLeftover(names.discarded());
    Tree previous = tree(names.previous());
    if (previous.isAbsent()) {
      return;
    }
    if (!previous.isOurs()) {
      throw inTheWay(names.previous());
    }
    Tree target = tree(names.target());
    if (target.isOurs()) {
      discardPrevious();
    } else {
      putBack(target);
    }
  }

  private void putBack(Tree target) throws IOException {
    if (target.isEmptyFolder()) {
      disk.delete(target.root());
    }
    if (!target.isAbsent()) {
      throw PublishFailure.notOurs(
          "an earlier run was interrupted; its files are safe in "
              + names.previous()
              + ", but something else is at "
              + target.root()
              + "; move that elsewhere");
    }
    disk.move(names.previous(), target.root());
    disk.flush(names.parent());
    notices.add("an earlier run was interrupted; " + target.root() + " has been restored");
  }

  private void deleteLeftover(Path folder) throws IOException {
    Tree leftover = tree(folder);
    if (leftover.isAbsent()) {
      return;
    }
    if (!leftover.isOurs() && !leftover.isEmptyFolder()) {
      throw inTheWay(folder);
    }
    leftover.delete();
  }

  // Looking before anything is touched.

  private void refuseWhatIsNotOurs() throws IOException {
    Tree target = tree(names.target());
    if (target.isAbsent() || target.isEmptyFolder()) {
      return;
    }
    if (!target.isOurs()) {
      throw PublishFailure.notOurs(
          target.root()
              + " was left unchanged because Stackside did not make it;"
              + " give --out a new or an empty folder");
    }
    Optional<String> foreign = target.foreign(marker(target));
    if (foreign.isPresent()) {
      throw PublishFailure.notOurs(
          target.root().resolve(foreign.get())
              + " was not put there by Stackside, and a build replaces the whole folder;"
              + " move that file elsewhere");
    }
  }

  private static Marker marker(Tree target) throws IOException {
    return target
        .disk()
        .read(target.marker(), SizeLimit.WRITTEN)
        .flatMap(Marker::read)
        .orElseThrow(
            () ->
                PublishFailure.notOurs(
                    target.root()
                        + " was left unchanged: its file "
                        + Marker.NAME
                        + " is damaged or was made by a newer version of Stackside;"
                        + " move the folder elsewhere, or give --out another one"));
  }

  private static PublishFailure inTheWay(Path path) {
    return PublishFailure.notOurs(
        path + " is in the way and was not made by Stackside; move it elsewhere");
  }

  private Tree tree(Path root) {
    return new Tree(disk, root);
  }

  // Telling the user.

  private PublishFailure failure(IOException e) {
    return e instanceof PublishFailure known
        ? known
        : PublishFailure.disk(e, names.target(), state());
  }

  private String state() {
    try {
      boolean inPlace = tree(names.target()).isOurs();
      if (!tree(names.previous()).isOurs()) {
        return inPlace ? "The files that were there are unchanged" : "Nothing was changed";
      }
      return inPlace
          ? "The new files are in place; the earlier ones are safe in " + names.previous()
          : "The earlier files are whole in " + names.previous() + "; the next run restores them";
    } catch (IOException e) {
      return "The earlier files are safe in "
          + names.target()
          + " or in "
          + names.previous()
          + "; the next run restores them";
    }
  }
}
