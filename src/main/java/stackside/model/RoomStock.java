package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.source.Location;

/** What is kept in a room. */
public record RoomStock(
    Location at,
    List<Fact<Instrument>> instruments,
    List<Fact<Cable>> cables,
    List<Fact<Electrode>> neutralElectrodes,
    List<Fact<Accessory>> spares,
    Optional<Fact<String>> sparesWhere) {
  public RoomStock {
    instruments = List.copyOf(instruments);
    cables = List.copyOf(cables);
    neutralElectrodes = List.copyOf(neutralElectrodes);
    spares = List.copyOf(spares);
  }
}
