package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.AssetStatus;
import stackside.model.Kind;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds generators in use that no room lists. */
final class AssetInNoRoom implements Rule {
  private static final Fault FAULT =
      new Fault("asset-in-no-room", Severity.WARNING, "a generator in use stands in no room");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (unit.anyBroken(Kind.ROOM)) {
      return List.of();
    }
    return unit.assets().stream()
        .filter(asset -> inUse(asset.status().value()))
        .filter(asset -> unit.roomsWith(asset).isEmpty())
        .map(
            asset ->
                FAULT
                    .at(
                        asset.at(),
                        "%s is '%s', and no room lists it"
                            .formatted(asset.id().slug(), asset.status().value().spoken()))
                    .help("add it to its room, or correct its status"))
        .toList();
  }

  private static boolean inUse(AssetStatus status) {
    return switch (status) {
      case IN_USE, ON_LOAN -> true;
      case SPARE, QUARANTINED -> false;
    };
  }
}
