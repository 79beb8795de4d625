package stackside.publish;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import stackside.render.OutputFile;

/**
 * The files of one output folder, by path. No two paths collide on any file system, whether or not
 * it is case-sensitive.
 */
record FileTree(SortedMap<String, OutputFile> files) {

  FileTree {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /**
   * @throws IllegalArgumentException if two files collide; that is a bug in a renderer
   */
  static FileTree of(Collection<OutputFile> files) {
    SortedMap<String, OutputFile> byPath = new TreeMap<>();
    Map<String, String> folded = new TreeMap<>();
    for (OutputFile file : files) {
      if (file.path().equals(Marker.NAME)) {
        throw new IllegalArgumentException("'" + Marker.NAME + "' is the marker's own name");
      }
      byPath.put(file.path(), file);
      String other = folded.put(fold(file.path()), file.path());
      if (other != null) {
        throw new IllegalArgumentException("'" + file.path() + "' would overwrite '" + other + "'");
      }
    }
    for (String path : byPath.keySet()) {
      for (String folder : foldersOf(path)) {
        String other = folded.get(fold(folder));
        if (other != null) {
          throw new IllegalArgumentException(
              "'" + other + "' is where '" + path + "' needs a folder");
        }
      }
    }
    refuseFoldersThatDifferInCapitals(byPath.keySet());
    return new FileTree(byPath);
  }

  private static void refuseFoldersThatDifferInCapitals(Set<String> paths) {
    Map<String, String> folded = new TreeMap<>();
    for (String path : paths) {
      for (String folder : foldersOf(path)) {
        String other = folded.put(fold(folder), folder);
        if (other != null && !other.equals(folder)) {
          throw new IllegalArgumentException(
              "the folders '" + folder + "' and '" + other + "' differ only in capitals");
        }
      }
    }
  }

  /** The folders that the files need, parents first. */
  Set<String> folders() {
    Set<String> folders = new TreeSet<>();
    files.keySet().forEach(path -> folders.addAll(foldersOf(path)));
    return folders;
  }

  private static List<String> foldersOf(String path) {
    Set<String> folders = new LinkedHashSet<>();
    for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
      folders.add(path.substring(0, slash));
    }
    return List.copyOf(folders);
  }

  private static String fold(String path) {
    return Normalizer.normalize(path, Normalizer.Form.NFC)
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }
}
