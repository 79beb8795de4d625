package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Room;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks about generators that rooms of two locations list. */
final class AssetInTwoHospitals implements Rule {
  private static final Fault FAULT =
      new Fault(
          "asset-in-two-hospitals", Severity.WARNING, "rooms of two locations list one generator");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Asset asset : analysis.unit().assets()) {
      List<Room> rooms = analysis.unit().roomsWith(asset);
      rooms.stream()
          .filter(
              room -> !room.location().value().id().equals(rooms.get(0).location().value().id()))
          .findFirst()
          .ifPresent(room -> found.add(problem(asset, rooms.get(0), room)));
    }
    return found;
  }

  private static Problem problem(Asset asset, Room first, Room other) {
    return FAULT
        .at(
            listing(other, asset).at(),
            "%s is listed in %s at %s and in %s at %s"
                .formatted(
                    asset.id().slug(),
                    Wording.quoted(other),
                    Wording.quoted(other.location().value()),
                    Wording.quoted(first),
                    Wording.quoted(first.location().value())))
        .note(listing(first, asset).at(), "the other room")
        .help("write the number that stands on the generator in this room");
  }

  private static Fact<Asset> listing(Room room, Asset asset) {
    return room.assets().stream()
        .filter(it -> it.value().id().equals(asset.id()))
        .findFirst()
        .orElseThrow();
  }
}
