package stackside.source;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** All files of one reading, so that a message can quote the line that it is about. */
public record Sources(Map<String, SourceText> files) {
  public Sources {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }

  public static Sources of(List<SourceText> texts) {
    Map<String, SourceText> files = new TreeMap<>();
    texts.forEach(text -> files.put(text.file(), text));
    return new Sources(files);
  }

  /** The line that a location points to, as its author wrote it; absent for an empty place. */
  public Optional<String> excerpt(Location at) {
    return Optional.ofNullable(files.get(at.file()))
        .map(text -> text.line(at.line()))
        .filter(line -> !line.isBlank());
  }
}
