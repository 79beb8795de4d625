package stackside.publish;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.signed.Fingerprint;
import stackside.render.OutputFile;

/** The files of a folder with the fingerprint of each, by path. */
public record FileList(SortedMap<String, Fingerprint> files) {
  public FileList {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  public static FileList of(Collection<OutputFile> files) {
    SortedMap<String, Fingerprint> prints = new TreeMap<>();
    files.forEach(file -> prints.put(file.path(), Fingerprint.of(file.bytes())));
    return new FileList(prints);
  }

  /** The same list without one file. */
  public FileList without(String path) {
    SortedMap<String, Fingerprint> fewer = new TreeMap<>(files);
    fewer.remove(path);
    return new FileList(fewer);
  }

  /** One fingerprint for the whole list. */
  public Fingerprint fingerprint() {
    return Fingerprint.of(text().getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  /** The files of another list that are not as this one knows them, and those that it lacks. */
  public List<String> differing(FileList other) {
    return Stream.concat(files.keySet().stream(), other.files.keySet().stream())
        .distinct()
        .sorted()
        .filter(path -> !files.containsKey(path) || !files.get(path).equals(other.files.get(path)))
        .toList();
  }

  /** One file a line: fingerprint, space, path. */
  String text() {
    return files.entrySet().stream()
        .map(file -> file.getValue() + " " + file.getKey() + "\n")
        .collect(Collectors.joining());
  }
}
