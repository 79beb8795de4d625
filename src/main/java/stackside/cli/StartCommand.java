package stackside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stackside.publish.NewFolder;
import stackside.render.OutputFile;

/** Begins a new unit's content. */
@Command(
    name = "start",
    description = "Begins a new unit's content, with each place to fill marked FILL-IN.")
final class StartCommand implements Callable<Integer> {
  private static final String RESOURCES = "/stackside/start/";

  private final Desk desk;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "The folder to make.")
  private Path folder = Path.of("");

  StartCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
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
    return ExitCode.CLEAN.number();
  }

  static List<OutputFile> files() throws IOException {
    String list = new String(resource("files.txt"), StandardCharsets.UTF_8);
    List<OutputFile> files = new ArrayList<>();
    for (String path : list.lines().toList()) {
      files.add(new OutputFile(path, resource(path)));
    }
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
