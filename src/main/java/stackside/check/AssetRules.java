package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.program.Events;
import stackside.model.Asset;
import stackside.model.AssetStatus;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Room;
import stackside.model.Unit;
import stackside.source.Location;

/** Generators: their software, their status and their rooms. */
final class AssetRules {

  private AssetRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "software-not-described",
            "an asset runs software that its machine's description does not cover",
            AssetRules::softwareNotDescribed),
        error(
            "software-against-service-log",
            "an asset's software differs from its last service event",
            AssetRules::softwareAgainstServiceLog),
        error(
            "asset-not-fit-for-use",
            "a room lists a generator that is not in use",
            AssetRules::assetNotFitForUse),
        warning("asset-in-no-room", "a generator in use is in no room", AssetRules::assetInNoRoom),
        error(
            "asset-in-two-rooms",
            "two rooms of one location list a generator that is not mobile",
            AssetRules::assetInTwoRooms),
        warning(
            "asset-in-two-hospitals",
            "rooms of two locations list one generator",
            AssetRules::assetInTwoHospitals));
  }

  private static List<Finding> softwareNotDescribed(CheckedUnit checked) {
    return checked.unit().assets().stream()
        .filter(asset -> !describes(asset.machine().value(), asset.software().value()))
        .map(AssetRules::softwareNotDescribed)
        .toList();
  }

  private static boolean describes(Machine machine, String software) {
    return machine.software().stream().anyMatch(version -> version.value().equals(software));
  }

  private static Finding softwareNotDescribed(Asset asset) {
    Machine machine = asset.machine().value();
    Location versions = machine.software().stream().findFirst().map(Fact::at).orElse(machine.at());
    return Finding.at(
            asset.software().at(),
            "%s runs software %s, but the description of %s covers only %s"
                .formatted(
                    asset.id().slug(),
                    asset.software().value(),
                    Wording.quoted(machine),
                    Wording.list(machine.software().stream().map(Fact::value).toList())))
        .note(versions, "the versions that the description covers")
        .help(
            "correct the version, or check the description against the new software and add that version");
  }

  private static List<Finding> softwareAgainstServiceLog(CheckedUnit checked) {
    return checked.unit().assets().stream()
        .flatMap(
            asset -> softwareAgainstServiceLog(asset, Events.of(checked.unit(), asset)).stream())
        .toList();
  }

  private static Optional<Finding> softwareAgainstServiceLog(Asset asset, Events events) {
    return events.all().stream()
        .flatMap(event -> event.softwareAfter().stream())
        .reduce((earlier, later) -> later)
        .filter(after -> !after.value().equals(asset.software().value()))
        .map(
            after ->
                Finding.at(
                        asset.software().at(),
                        "%s is listed with software %s, but its last service event left it with %s"
                            .formatted(asset.id().slug(), asset.software().value(), after.value()))
                    .note(after.at(), "the service event")
                    .help("look at the machine itself, then correct whichever is wrong"));
  }

  private static List<Finding> assetNotFitForUse(CheckedUnit checked) {
    return checked.unit().rooms().stream()
        .flatMap(
            room ->
                room.assets().stream()
                    .filter(asset -> !inUse(asset.value().status().value()))
                    .map(asset -> assetNotFitForUse(room, asset)))
        .toList();
  }

  private static boolean inUse(AssetStatus status) {
    return switch (status) {
      case IN_USE, ON_LOAN, MOBILE -> true;
      case SPARE, QUARANTINED -> false;
    };
  }

  private static Finding assetNotFitForUse(Room room, Fact<Asset> asset) {
    return Finding.at(
            asset.at(),
            "%s is listed in %s, but its status is '%s'"
                .formatted(
                    asset.value().id().slug(),
                    Wording.quoted(room),
                    asset.value().status().value().spoken()))
        .note(asset.value().status().at(), "its status")
        .help("remove it from the room, or correct its status");
  }

  private static List<Finding> assetInNoRoom(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.ROOM)) {
      return List.of();
    }
    return unit.assets().stream()
        .filter(asset -> inUse(asset.status().value()))
        .filter(asset -> unit.roomsWith(asset).isEmpty())
        .map(
            asset ->
                Finding.at(
                        asset.at(),
                        "%s is '%s', but no room lists it"
                            .formatted(asset.id().slug(), asset.status().value().spoken()))
                    .help("add it to its room, or correct its status"))
        .toList();
  }

  private static List<Finding> assetInTwoRooms(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Asset asset : checked.unit().assets()) {
      List<Room> rooms = checked.unit().roomsWith(asset);
      if (rooms.size() < 2 || asset.status().value() == AssetStatus.MOBILE) {
        continue;
      }
      Room first = rooms.get(0);
      rooms.stream()
          .skip(1)
          .filter(room -> room.location().value().id().equals(first.location().value().id()))
          .findFirst()
          .ifPresent(
              room ->
                  found.add(
                      Finding.at(
                              listing(room, asset).at(),
                              "%s is listed in %s and in %s"
                                  .formatted(
                                      asset.id().slug(),
                                      Wording.quoted(room),
                                      Wording.quoted(first)))
                          .note(listing(first, asset).at(), "the other room")
                          .help(
                              "write the number on the generator in this room; if one"
                                  + " generator serves both, give it the status 'mobile'")));
    }
    return found;
  }

  private static List<Finding> assetInTwoHospitals(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Asset asset : checked.unit().assets()) {
      List<Room> rooms = checked.unit().roomsWith(asset);
      rooms.stream()
          .filter(
              room -> !room.location().value().id().equals(rooms.get(0).location().value().id()))
          .findFirst()
          .ifPresent(room -> found.add(assetInTwoHospitals(asset, rooms.get(0), room)));
    }
    return found;
  }

  private static Finding assetInTwoHospitals(Asset asset, Room first, Room other) {
    return Finding.at(
            listing(other, asset).at(),
            "%s is listed in %s at %s and in %s at %s"
                .formatted(
                    asset.id().slug(),
                    Wording.quoted(other),
                    Wording.quoted(other.location().value()),
                    Wording.quoted(first),
                    Wording.quoted(first.location().value())))
        .note(listing(first, asset).at(), "the other room")
        .help("write the number on the generator in this room");
  }

  private static Fact<Asset> listing(Room room, Asset asset) {
    return room.assets().stream()
        .filter(it -> it.value().id().equals(asset.id()))
        .findFirst()
        .orElseThrow();
  }
}
