package stackside.render;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stackside.model.Kind;
import stackside.model.ThingId;

/** Relative links between pages. */
final class LinksTest {

  @ParameterizedTest
  @CsvSource({
    "index.html, rooms/a.html, rooms/a.html",
    "rooms/a.html, index.html, ../index.html",
    "rooms/a.html, rooms/b.html, b.html",
    "modes/m/cut.html, modes/n/cut.html, ../n/cut.html",
    "modes/m/cut.html, rooms/a.html, ../../rooms/a.html",
    "rooms/a.html, rooms/a.html, a.html"
  })
  void aLinkGoesUpToTheSharedFolderAndDown(String from, String to, String link) {
    assertThat(Links.relative(from, to)).isEqualTo(link);
  }

  @Test
  void aPlaceOnTheSamePageIsAnAnchorAlone() {
    ThingId socket = new ThingId(Kind.SOCKET, "tern/mono-1");
    assertThat(Links.to(socket).from("socket-maps/tern.html")).isEqualTo("#socket-mono-1");
    assertThat(Links.to(socket).from("rooms/a.html"))
        .isEqualTo("../socket-maps/tern.html#socket-mono-1");
  }

  @ParameterizedTest
  @EnumSource
  void everyKindHasAPlace(Kind kind) {
    assertThat(Links.to(new ThingId(kind, "one")).page()).endsWith(".html");
  }
}
