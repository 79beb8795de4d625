package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Asset;
import stackside.model.AssetStatus;
import stackside.model.Fact;
import stackside.model.Room;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds rooms that list a generator which is put away or quarantined. */
final class AssetNotFitForUse implements Rule {
  private static final Fault FAULT =
      new Fault(
          "asset-not-fit-for-use", Severity.ERROR, "a room lists a generator that is not in use");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().rooms().stream()
        .flatMap(
            room ->
                room.assets().stream()
                    .filter(asset -> !fit(asset.value().status().value()))
                    .map(asset -> problem(room, asset)))
        .toList();
  }

  private static boolean fit(AssetStatus status) {
    return switch (status) {
      case IN_USE, ON_LOAN -> true;
      case SPARE, QUARANTINED -> false;
    };
  }

  private static Problem problem(Room room, Fact<Asset> asset) {
    return FAULT
        .at(
            asset.at(),
            "%s is listed in %s, and its status is '%s'"
                .formatted(
                    asset.value().id().slug(),
                    Wording.quoted(room),
                    asset.value().status().value().spoken()))
        .note(asset.value().status().at(), "where its status stands")
        .help("take it out of the room, or correct its status");
  }
}
