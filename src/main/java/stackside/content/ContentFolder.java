package stackside.content;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.SizeLimit;
import stackside.source.SourceText;
import stackside.source.Sources;

/**
 * The files of a content folder: found in sorted order, read within sane sizes, never through a
 * link that leads out of the folder.
 */
final class ContentFolder {
  private static final int MOST_FILES = 20_000;

  private final Path folder;
  private final Findings findings;
  private final Map<String, Optional<TextFile>> files = new TreeMap<>();
  private final List<SourceText> sources = new ArrayList<>();

  private ContentFolder(Path folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /**
   * Reads every file that has a place in a unit's content.
   *
   * @throws IOException if the disk fails
   */
  static ContentFolder read(Path folder, Findings findings) throws IOException {
    ContentFolder content = new ContentFolder(folder, findings);
    if (Files.isDirectory(folder)) {
      content.readTop();
    }
    return content;
  }

  /** The names of the files that were found in one of the folders, sorted. */
  List<String> in(Layout.Folder wanted) {
    return files.keySet().stream().filter(name -> name.startsWith(wanted.folder() + "/")).toList();
  }

  /** Whether a file of this name is there, readable or not. */
  boolean has(String name) {
    return files.containsKey(name);
  }

  /** The text of a file; absent where it is not there or cannot be used. */
  Optional<TextFile> file(String name) {
    return Optional.ofNullable(files.get(name)).flatMap(file -> file);
  }

  Sources sources() {
    return Sources.of(sources);
  }

  private void readTop() throws IOException {
    Path root = folder.toRealPath();
    for (String name : names(root)) {
      if (Layout.leftAlone(name)) {
        continue;
      }
      Optional<Layout.Folder> known = Layout.folder(name);
      if (known.isPresent()) {
        readFolder(root, known.orElseThrow());
      } else if (Layout.single(name).isPresent()) {
        readFile(root, name);
      } else {
        unknown(name, NearNames.of(name, Layout.knownNames()));
      }
    }
  }

  private void readFolder(Path root, Layout.Folder known) throws IOException {
    Path path = root.resolve(known.folder());
    String shown = known.folder() + "/";
    if (leadsOut(root, path, known.folder())) {
      return;
    }
    if (!Files.isDirectory(path)) {
      problem(
          ReadingFaults.UNREADABLE_FILE,
          known.folder(),
          "this is no folder",
          "make it a folder, or remove it");
      return;
    }
    for (String name : names(path)) {
      if (name.startsWith(".")) {
        continue;
      }
      if (!name.endsWith(known.ending())) {
        unknown(shown + name, List.of("*" + known.ending()));
      } else {
        readFile(root, shown + name);
      }
    }
  }

  private void unknown(String name, List<String> near) {
    findings.add(
        ReadingFaults.UNKNOWN_FILE
            .at(
                Location.startOf(name),
                Quote.of(name) + " has no place in a unit's content and is not read")
            .help(unknownHelp(name, near)));
  }

  private static String unknownHelp(String name, List<String> near) {
    if (name.contains("/")) {
      return "files here are named " + Quote.of(String.join("", near).replace("*", "ID"));
    }
    return near.isEmpty() ? "keep it outside the content folder" : NearNames.question(near);
  }

  private Iterable<String> names(Path path) throws IOException {
    TreeSet<String> names = new TreeSet<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(path)) {
      for (Path entry : entries) {
        names.add(String.valueOf(entry.getFileName()));
      }
    } catch (AccessDeniedException e) {
      String shown = path.getFileName() == null ? "." : String.valueOf(path.getFileName());
      problem(
          ReadingFaults.UNREADABLE_FILE,
          shown,
          "this folder may not be opened",
          "give yourself the right to read it");
    }
    return names;
  }

  private void readFile(Path root, String name) throws IOException {
    files.put(name, Optional.empty());
    if (files.size() > MOST_FILES) {
      if (files.size() == MOST_FILES + 1) {
        problem(
            ReadingFaults.TOO_MANY_FILES,
            name,
            "the folder holds more than " + MOST_FILES + " files",
            "look for a folder that does not belong to the content");
      }
      return;
    }
    Path path = root.resolve(name);
    if (!leadsOut(root, path, name)) {
      bytes(path, name).ifPresent(bytes -> decode(name, bytes));
    }
  }

  private void decode(String name, byte[] bytes) {
    Decoder.Decoded decoded = new Decoder(findings).decode(name, bytes);
    sources.add(decoded.file().source());
    if (decoded.usable()) {
      files.put(name, Optional.of(decoded.file()));
    }
  }

  private boolean leadsOut(Path root, Path path, String name) {
    try {
      if (path.toRealPath().startsWith(root)) {
        return false;
      }
      problem(
          ReadingFaults.LEADS_OUT,
          name,
          "this is a link to a place outside the content folder",
          "put the file itself here");
    } catch (IOException e) {
      problem(
          ReadingFaults.UNREADABLE_FILE,
          name,
          "this file cannot be opened",
          "look whether it is a link to something that is gone, and whether you may read it");
    }
    return true;
  }

  private Optional<byte[]> bytes(Path path, String name) throws IOException {
    if (!Files.isRegularFile(path)) {
      problem(
          ReadingFaults.UNREADABLE_FILE, name, "this is no ordinary file", "put a text file here");
      return Optional.empty();
    }
    try (InputStream stream = Files.newInputStream(path)) {
      Optional<byte[]> bytes = SizeLimit.WRITTEN.read(stream);
      if (bytes.isPresent()) {
        return bytes;
      }
      problem(
          ReadingFaults.FILE_TOO_LARGE,
          name,
          "the file is " + SizeLimit.WRITTEN.exceeded(),
          "split it, or look for something pasted into it by mistake");
    } catch (FileSystemException e) {
      problem(
          ReadingFaults.UNREADABLE_FILE,
          name,
          "this file may not be opened",
          "give yourself the right to read it");
    }
    return Optional.empty();
  }

  private void problem(Fault fault, String name, String message, String help) {
    findings.add(fault.at(Location.startOf(name), message).help(help));
  }
}
