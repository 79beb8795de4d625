package stackside.content;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
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
 * The files of a content folder, in sorted order. Files of absurd size are not read, and no link
 * that leads out of the folder is followed.
 */
final class ContentFolder {
  private static final int MOST_FILES = 20_000;
  private static final char UNREADABLE = '\ufffd';

  private final Path folder;
  private final Optional<Path> otherTemplates;
  private final Findings findings;
  private final Map<String, Optional<TextFile>> files = new TreeMap<>();
  private final List<SourceText> sources = new ArrayList<>();

  private ContentFolder(Path folder, Optional<Path> otherTemplates, Findings findings) {
    this.folder = folder;
    this.otherTemplates = otherTemplates;
    this.findings = findings;
  }

  /**
   * Reads every file that has a place in a unit's content.
   *
   * @param otherTemplates a folder whose templates are read instead of those in the content
   * @throws IOException if the disk fails
   */
  static ContentFolder read(Path folder, Optional<Path> otherTemplates, Findings findings)
      throws IOException {
    ContentFolder content = new ContentFolder(folder, otherTemplates, findings);
    if (Files.isDirectory(folder)) {
      content.readTop();
      content.readTemplates();
    }
    return content;
  }

  /** The names of the files that were found in one of the folders, sorted. */
  List<String> in(Layout.Folder wanted) {
    return files.keySet().stream().filter(name -> name.startsWith(wanted.folder() + "/")).toList();
  }

  /** The names of the unit's templates, each with {@code templates/} before it, sorted. */
  List<String> templates() {
    return files.keySet().stream().filter(name -> name.startsWith(Layout.TEMPLATES + "/")).toList();
  }

  /** Whether a file of this name is there, readable or not. */
  boolean has(String name) {
    return files.containsKey(name);
  }

  /** The text of a file; absent where it is not there or cannot be used. */
  Optional<TextFile> file(String name) {
    return Optional.ofNullable(files.get(name)).flatMap(file -> file);
  }

  /** Keeps the text of one of the program's files, so that messages can quote it. */
  void alsoRead(TextFile file) {
    sources.add(file.source());
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
        readFile(root, root.resolve(name), name);
      } else {
        unknown(name, NearNames.of(name, Layout.knownNames()));
      }
    }
  }

  private void readFolder(Path root, Layout.Folder known) throws IOException {
    Path path = root.resolve(known.folder());
    String shown = known.folder() + "/";
    if (leadsOut(root, path, known.folder()) || isNoFolder(path, known.folder())) {
      return;
    }
    for (String name : names(path)) {
      if (name.startsWith(".")) {
        continue;
      }
      if (!name.endsWith(known.ending())) {
        unknown(shown + name, List.of("*" + known.ending()));
      } else {
        readFile(root, root.resolve(shown + name), shown + name);
      }
    }
  }

  private boolean isNoFolder(Path path, String name) {
    if (Files.isDirectory(path)) {
      return false;
    }
    problem(
        ReadingFaults.UNREADABLE_FILE,
        name,
        "this is not a folder",
        "make it a folder, or remove it");
    return true;
  }

  private void readTemplates() throws IOException {
    Path content = folder.toRealPath();
    Path path = otherTemplates.orElse(content.resolve(Layout.TEMPLATES));
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)
        || (otherTemplates.isEmpty() && leadsOut(content, path, Layout.TEMPLATES))
        || isNoFolder(path, Layout.TEMPLATES)) {
      return;
    }
    Path root = path.toRealPath();
    readTemplates(root, "");
    for (String below : Layout.TEMPLATE_FOLDERS) {
      if (Files.isDirectory(root.resolve(below))
          && !leadsOut(root, root.resolve(below), Layout.TEMPLATES + "/" + below)) {
        readTemplates(root, below + "/");
      }
    }
  }

  /**
   * Reads the templates of one folder. A file that replaces nothing was meant for something and is
   * reported.
   */
  private void readTemplates(Path root, String below) throws IOException {
    for (String name : names(root.resolve(below))) {
      String inside = below + name;
      if (name.startsWith(".") || Layout.TEMPLATE_FOLDERS.contains(inside)) {
        continue;
      }
      if (Layout.isTemplate(inside)) {
        readFile(root, root.resolve(inside), Layout.TEMPLATES + "/" + inside);
      } else {
        replacesNothing(Layout.TEMPLATES + "/" + inside);
      }
    }
  }

  void replacesNothing(String name) {
    problem(
        ReadingFaults.UNKNOWN_TEMPLATE,
        name,
        Quote.of(name) + " replaces no file of the program",
        "give it the name of the file that it is to replace, or remove it");
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
        String name = String.valueOf(entry.getFileName());
        if (name.indexOf(UNREADABLE) < 0) {
          names.add(name);
        } else {
          problem(
              ReadingFaults.UNREADABLE_FILE,
              name,
              "the name of this file holds letters that Java cannot read here",
              "set LC_ALL to C.UTF-8 and run it again, or name the file in plain letters");
        }
      }
    } catch (AccessDeniedException e) {
      String shown = path.getFileName() == null ? "." : String.valueOf(path.getFileName());
      problem(
          ReadingFaults.UNREADABLE_FILE,
          shown,
          "you have no permission to open this folder",
          "change its permissions so that you can read it");
    }
    return names;
  }

  private void readFile(Path root, Path path, String name) throws IOException {
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
          "this is a link to a place outside the folder",
          "put the file itself here");
    } catch (IOException e) {
      problem(
          ReadingFaults.UNREADABLE_FILE,
          name,
          "this file cannot be opened",
          "check whether it links to something that is gone, and whether you have permission to read it");
    }
    return true;
  }

  private Optional<byte[]> bytes(Path path, String name) throws IOException {
    if (!Files.isRegularFile(path)) {
      problem(
          ReadingFaults.UNREADABLE_FILE,
          name,
          "this is not an ordinary file",
          "put a text file here");
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
          "you have no permission to open this file",
          "change its permissions so that you can read it");
    }
    return Optional.empty();
  }

  private void problem(Fault fault, String name, String message, String help) {
    findings.add(fault.at(Location.startOf(name), message).help(help));
  }
}
