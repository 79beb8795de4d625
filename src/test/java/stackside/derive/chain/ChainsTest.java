package stackside.derive.chain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.derive.Edited;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.Room;
import stackside.model.Socket;
import stackside.model.Unit;

final class ChainsTest {
  private static final String ADAPTOR =
      """
      === cables.yaml
      +- {id: adaptor, name: Adaptor, plug: two-pin, connector: three-pin, rated-voltage: 500 V peak}
      === rooms/room-1.yaml
      -  cables: [snare-cable]
      +  cables: [snare-cable, adaptor]
      """;

  private static Chains chains(Unit unit) {
    return Chains.in(Edited.find(unit, Kind.ROOM, "room-1", Room.class));
  }

  private static Instrument snare(Unit unit) {
    return Edited.find(unit, Kind.INSTRUMENT, "snare", Instrument.class);
  }

  private static Socket socket(Unit unit, String id) {
    return Edited.find(unit, Kind.SOCKET, "arrowgrass/" + id, Socket.class);
  }

  @Test
  void throughOneCable() {
    Unit unit = Edited.base("");
    Chain chain = chains(unit).shortest(snare(unit), socket(unit, "mono-1")).orElseThrow();
    assertThat(chain.cables())
        .extracting(cable -> cable.id().slug())
        .containsExactly("snare-cable");
    assertThat(chain.plug().slug()).isEqualTo("three-pin");
    assertThat(chain.parts())
        .extracting(part -> part.id().slug())
        .containsExactly("snare-cable", "snare");
  }

  @Test
  void notIntoASocketThatTakesAnotherPlug() {
    Unit unit = Edited.base("");
    assertThat(chains(unit).between(snare(unit), socket(unit, "bi"))).isEmpty();
  }

  @Test
  void throughAnAdaptorTheWeakestPartCounts() {
    Unit unit = Edited.base(ADAPTOR);
    Chain chain = chains(unit).shortest(snare(unit), socket(unit, "bi")).orElseThrow();
    assertThat(chain.parts())
        .extracting(part -> part.id().slug())
        .containsExactly("adaptor", "snare-cable", "snare");
    assertThat(chain.weakest().orElseThrow().part().id().slug()).isEqualTo("adaptor");
    assertThat(chain.ratings()).hasSize(3);
  }

  @Test
  void anAdaptorThatIsNotKeptBridgesNothing() {
    Unit unit = Edited.base(ADAPTOR.lines().limit(2).reduce("", (a, b) -> a + b + "\n"));
    assertThat(chains(unit).between(snare(unit), socket(unit, "bi"))).isEmpty();
  }

  @Test
  void anExtensionIsUsedAtMostOnce() {
    Unit unit =
        Edited.base(
            """
            === cables.yaml
            +- {id: extension, name: Extension, plug: three-pin, connector: three-pin, rated-voltage: 900 V peak}
            === rooms/room-1.yaml
            -  cables: [snare-cable]
            +  cables: [snare-cable, extension]
            """);
    assertThat(chains(unit).between(snare(unit), socket(unit, "mono-1")))
        .extracting(chain -> chain.cables().size())
        .containsExactly(1, 2);
    assertThat(chains(unit).shortest(snare(unit), socket(unit, "mono-1")).orElseThrow().cables())
        .hasSize(1);
  }
}
