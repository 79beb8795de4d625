package stackside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.content.Chapters;
import stackside.publish.NewFolder;
import stackside.render.OutputFile;

/** Begins a new unit's content. */
final class StartCommand implements Command {
  private static final String RESOURCES = "/stackside/start/";
  private static final CommandSpec.Place FOLDER =
      new CommandSpec.Place("FOLDER", true, "The folder to make.");
  static final CommandSpec FORM =
      new CommandSpec(
          "start",
          "Begins a new unit's content, with each place to fill marked FILL-IN.",
          Optional.of(FOLDER),
          List.of());

  private final CommandContext desk;
  private final Path folder;

  StartCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.folder = Arguments.path(given.place().orElseThrow());
  }

  @Override
  public ExitCode run() throws IOException {
    List<OutputFile> files = files();
    NewFolder.create(desk.surroundings().disk(), desk.path(folder), files);
    desk.console()
        .result(
            files.size()
                + " files in "
                + folder
                + "; open "
                + folder.resolve("README.md")
                + ", then run 'stackside check "
                + folder
                + "'");
    return ExitCode.CLEAN;
  }

  static List<OutputFile> files() throws IOException {
    String list = new String(resource("files.txt"), StandardCharsets.UTF_8);
    List<OutputFile> files = new ArrayList<>();
    for (String path : list.lines().toList()) {
      files.add(new OutputFile(path, resource(path)));
    }
    Chapters.names().forEach(name -> files.add(OutputFile.text("chapters/" + name + ".md", "")));
    return files;
  }

  private static byte[] resource(String path) throws IOException {
    try (InputStream stream = StartCommand.class.getResourceAsStream(RESOURCES + path)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its file " + path);
      }
      return stream.readAllBytes();
    }
  }
}
