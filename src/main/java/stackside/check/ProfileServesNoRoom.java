package stackside.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Profile;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Asks about profiles that answer nothing which a room with their machine offers. */
final class ProfileServesNoRoom implements Question {
  private static final Fault FAULT =
      new Fault(
          "profile-serves-no-room",
          Severity.WARNING,
          "a profile answers nothing that a room offers");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    if (!unit.broken().isEmpty()) {
      return List.of();
    }
    Set<ThingId> used =
        analysis.coverage().cells().stream()
            .flatMap(
                cell ->
                    Stream.concat(
                        cell.cover().preferred().stream(), cell.cover().alternatives().stream()))
            .map(Profile::id)
            .collect(Collectors.toSet());
    return unit.profiles().stream()
        .filter(profile -> !used.contains(profile.id()) && !profile.answers(FAULT.id()))
        .filter(profile -> !unit.roomsWith(profile.machine().value()).isEmpty())
        .map(ProfileServesNoRoom::problem)
        .toList();
  }

  private static Problem problem(Profile profile) {
    return FAULT
        .at(
            profile.at(),
            "profile '%s' answers nothing that a room with %s offers"
                .formatted(profile.id().slug(), Wording.quoted(profile.machine().value())))
        .help("correct its lesion, site, step or patients, or add it to what a room offers");
  }
}
