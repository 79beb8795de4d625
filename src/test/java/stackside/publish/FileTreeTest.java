package stackside.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.render.OutputFile;

final class FileTreeTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "index.html index.html",
        "index.html Index.html",
        "rooms/i.html rooms/I.html",
        "rooms rooms/a.html",
        "Rooms rooms/deep/a.html",
        "rooms/a.html Rooms/b.html",
        ".stackside index.html"
      })
  void filesThatWouldMeet_areRefused(String paths) {
    List<OutputFile> files =
        Stream.of(paths.split(" ")).map(path -> OutputFile.text(path, "")).toList();
    assertThatIllegalArgumentException().isThrownBy(() -> FileTree.of(files));
  }

  @Test
  void foldersComeAfterThoseTheyStandIn() {
    FileTree tree =
        FileTree.of(
            List.of(
                OutputFile.text("c/x/y/index.html", ""),
                OutputFile.text("c.html", ""),
                OutputFile.text("b/index.html", "")));
    assertThat(tree.folders()).containsExactly("b", "c", "c/x", "c/x/y");
  }
}
