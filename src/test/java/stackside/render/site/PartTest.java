package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PartTest {

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3})
  void rowOfAnotherLengthThanItsHead_isRefused(int cells) {
    List<RichLine> line = Stream.generate(() -> RichLine.of("cell")).limit(cells).toList();
    Part.Grid.GridRow row = new Part.Grid.GridRow(Optional.empty(), RichLine.of("name"), line);
    assertThatThrownBy(() -> new Part.Grid("table", List.of("one", "two", "three"), List.of(row)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyKindHasItsMacro() throws IOException {
    Html html = new Html("");
    Part.Side side = new Part.Side(RichLine.of("one"), html);
    List<Part> all =
        List.of(
            new Part.Facts(List.of()),
            new Part.Grid("table", List.of("one"), List.of()),
            new Part.Lines(List.of()),
            new Part.Steps(List.of()),
            new Part.Say(RichLine.of("words")),
            new Part.Box("box", List.of()),
            new Part.CardCheck("", "", List.of(), List.of()),
            new Part.Text(html),
            new Part.Figure(html, html, Optional.empty()),
            new Part.Caution("caution", html),
            new Part.Picks(List.of()),
            new Part.Source("text"),
            new Part.Pair(side, side),
            new Part.Sides(List.of()));
    assertThat(all).hasSize(Part.class.getPermittedSubclasses().length);
    assertThat(all)
        .extracting(Part::kind)
        .containsExactly(
            "facts",
            "grid",
            "lines",
            "steps",
            "say",
            "box",
            "cardcheck",
            "text",
            "figure",
            "caution",
            "picks",
            "source",
            "pair",
            "sides");
    String macros = Files.readString(Path.of("templates/parts.ftlh"));
    assertThat(all).allSatisfy(part -> assertThat(macros).contains("<#macro " + part.kind() + " "));
  }
}
