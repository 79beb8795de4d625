package stackside.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import stackside.render.OutputFile;
import stackside.source.SizeLimit;

/** A folder on the disk with everything below it, whether or not it is ours. */
record Tree(Disk disk, Path root) {

  /** Files that file managers leave in the folders they show; nobody misses them. */
  private static final Set<String> LEFT_BY_FILE_MANAGERS =
      Set.of(".DS_Store", "Thumbs.db", "desktop.ini");

  boolean isAbsent() throws IOException {
    return disk.at(root) == Disk.Entry.ABSENT;
  }

  boolean isEmptyFolder() throws IOException {
    return disk.at(root) == Disk.Entry.FOLDER && disk.list(root).isEmpty();
  }

  /** Whether Stackside made it. */
  boolean isOurs() throws IOException {
    return disk.at(root) == Disk.Entry.FOLDER && disk.at(marker()) == Disk.Entry.FILE;
  }

  Path marker() {
    return root.resolve(Marker.NAME);
  }

  /** A file that the marker does not list; absent if all files are Stackside's. */
  Optional<String> foreign(Marker marker) throws IOException {
    return paths().stream().filter(path -> !marker.list().files().containsKey(path)).findFirst();
  }

  /** All files except the marker. */
  SortedMap<String, OutputFile> files() throws IOException {
    SortedMap<String, OutputFile> files = new TreeMap<>();
    for (String path : paths()) {
      files.put(path, new OutputFile(path, bytes(root.resolve(path))));
    }
    return files;
  }

  private byte[] bytes(Path file) throws IOException {
    return disk.read(file, SizeLimit.MADE).orElseThrow(() -> PublishFailure.tooLarge(file));
  }

  /**
   * What the next tree keeps of this one.
   *
   * @param paths files that stay exactly as they are
   * @param gone how many files change or disappear
   */
  record Unchanged(Set<String> paths, int gone) {
    static final Unchanged NOTHING = new Unchanged(Set.of(), 1);

    boolean isAll(Set<String> next) {
      return gone == 0 && paths.equals(next);
    }
  }

  /**
   * What the next tree keeps of this one. Compares file by file, so that the whole tree is never in
   * memory.
   */
  Unchanged kept(SortedMap<String, OutputFile> next) throws IOException {
    Set<String> kept = new TreeSet<>();
    List<String> paths = paths();
    for (String path : paths) {
      OutputFile file = next.get(path);
      if (file != null && holds(root.resolve(path), file)) {
        kept.add(path);
      }
    }
    return new Unchanged(kept, paths.size() - kept.size());
  }

  private boolean holds(Path path, OutputFile file) throws IOException {
    return disk.read(path, SizeLimit.MADE)
        .filter(bytes -> Arrays.equals(bytes, file.bytes()))
        .isPresent();
  }

  private List<String> paths() throws IOException {
    List<String> paths = new ArrayList<>();
    collect(root, "", paths);
    paths.remove(Marker.NAME);
    return paths;
  }

  private void collect(Path folder, String prefix, List<String> paths) throws IOException {
    for (Path entry : disk.list(folder)) {
      String name = String.valueOf(entry.getFileName());
      if (disk.at(entry) == Disk.Entry.FOLDER) {
        collect(entry, prefix + name + "/", paths);
      } else if (!LEFT_BY_FILE_MANAGERS.contains(name) && !Neighbours.isLock(name)) {
        paths.add(prefix + name);
      }
    }
  }

  /**
   * Deletes everything. The marker goes last, so that a half-deleted tree is still known as ours.
   */
  void delete() throws IOException {
    for (Path entry : disk.list(root)) {
      if (!entry.equals(marker())) {
        deleteBelow(entry);
      }
    }
    if (disk.at(marker()) != Disk.Entry.ABSENT) {
      disk.delete(marker());
    }
    disk.delete(root);
  }

  private void deleteBelow(Path entry) throws IOException {
    if (disk.at(entry) == Disk.Entry.FOLDER) {
      for (Path each : disk.list(entry)) {
        deleteBelow(each);
      }
    }
    disk.delete(entry);
  }
}
