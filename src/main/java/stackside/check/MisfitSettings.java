package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Unit;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Settings of profiles that do not fit their mode's description. Where none of several fits, the
 * description is the one thing to look at.
 */
record MisfitSettings(Fault fault, List<Misfit> misfits) {
  private static final int SEVERAL = 2;

  /**
   * One setting that does not fit.
   *
   * @param described what the description says of the control
   * @param all what to say at the description, if no setting fits it
   */
  record Misfit(Mode mode, Problem problem, Location described, String all) {}

  /** What is found of one fault over all settings of the profiles. */
  static List<Problem> problems(
      Unit unit, Fault fault, Function<PedalSetting, Stream<Optional<Misfit>>> judge) {
    List<Misfit> misfits = settings(unit).flatMap(judge).flatMap(Optional::stream).toList();
    return new MisfitSettings(fault, misfits).problems(unit);
  }

  private static Stream<PedalSetting> settings(Unit unit) {
    return unit.profiles().stream().flatMap(profile -> profile.pedalSettings().stream());
  }

  /** One problem for each misfit, or one for a mode whose settings are all misfits. */
  private List<Problem> problems(Unit unit) {
    List<Problem> found = new ArrayList<>();
    misfits.stream()
        .collect(
            Collectors.groupingBy(
                misfit -> List.of(misfit.mode().id(), misfit.described()),
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .forEach(
            same -> {
              if (same.size() >= SEVERAL && same.size() == uses(unit, same.get(0).mode())) {
                found.add(ofAll(same));
              } else {
                same.forEach(misfit -> found.add(misfit.problem()));
              }
            });
    return found;
  }

  private static int uses(Unit unit, Mode mode) {
    return (int)
        settings(unit).filter(setting -> setting.mode().value().id().equals(mode.id())).count();
  }

  private Problem ofAll(List<Misfit> same) {
    Misfit first = same.get(0);
    return fault
        .at(first.described(), "%s: so say all %s profiles".formatted(first.all(), same.size()))
        .note(first.problem().at(), "the first of them: " + first.problem().message())
        .help("correct the machine's description, or the profiles if they are all wrong");
  }
}
