package stackside.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThingIdTest {

  @ParameterizedTest
  @ValueSource(strings = {"socket:cordgrass/mono-1", "asset:EQ-0417", "room:room-2"})
  void link_readsBack(String link) {
    assertThat(ThingId.parse(link)).map(ThingId::toString).contains(link);
  }

  @ParameterizedTest
  @ValueSource(strings = {"room-2", "rom:room-2", "room:Room 2", "room:", "room:a--b", "room:../x"})
  void otherText_isNoLink(String text) {
    assertThat(ThingId.parse(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "ROOM, room-2, true",
    "ROOM, Room-2, false",
    "ROOM, room_2, false",
    "ROOM, cordgrass/two, false",
    "ASSET, EQ-0417, true",
    "ASSET, EQ 0417, false"
  })
  void authorsIds_areSlugs(Kind kind, String text, boolean allowed) {
    assertThat(ThingId.isId(kind, text)).isEqualTo(allowed);
  }

  @Test
  void localPart_followsTheOwner() {
    assertThat(new ThingId(Kind.SOCKET, "cordgrass/mono-1").local()).isEqualTo("mono-1");
    assertThat(new ThingId(Kind.ROOM, "room-2").local()).isEqualTo("room-2");
  }
}
