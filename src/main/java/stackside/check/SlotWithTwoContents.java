package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.StoredProgram;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds profiles that expect different things of one program slot of one machine. */
final class SlotWithTwoContents implements Rule {
  private static final Fault FAULT =
      new Fault(
          "slot-with-two-contents",
          Severity.ERROR,
          "two profiles expect different things of one program slot");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Machine machine : analysis.unit().machines()) {
      Map<Integer, Profile> first = new LinkedHashMap<>();
      for (Profile profile : analysis.unit().profilesOn(machine)) {
        profile
            .settings()
            .flatMap(Settings::program)
            .map(program -> first.computeIfAbsent(program.slot().value(), slot -> profile))
            .flatMap(earlier -> problem(earlier, profile))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private static Optional<Problem> problem(Profile earlier, Profile later) {
    Settings one = earlier.settings().orElseThrow();
    Settings other = later.settings().orElseThrow();
    List<String> differences = differences(one, other);
    if (differences.isEmpty()) {
      return Optional.empty();
    }
    StoredProgram program = other.program().orElseThrow();
    return Optional.of(
        FAULT
            .at(
                program.slot().at(),
                "slot %d cannot hold this and what profile '%s' expects of it: %s"
                    .formatted(
                        program.slot().value(), earlier.id().slug(), Wording.list(differences)))
            .note(one.program().orElseThrow().slot().at(), "the other profile")
            .help("give one of them a slot of its own, or make the two agree"));
  }

  private static List<String> differences(Settings one, Settings other) {
    List<String> found = new ArrayList<>();
    compare(
        found,
        "another name on the display",
        one,
        other,
        it -> it.program().orElseThrow().shownAs().value());
    compare(found, "another socket", one, other, it -> it.socket().value().id());
    compare(found, "another setting on yellow", one, other, it -> contents(it.yellow()));
    compare(found, "another setting on blue", one, other, it -> contents(it.blue()));
    return found;
  }

  private static void compare(
      List<String> found,
      String words,
      Settings one,
      Settings other,
      Function<Settings, Object> field) {
    if (!field.apply(one).equals(field.apply(other))) {
      found.add(words);
    }
  }

  private static Object contents(PedalUse use) {
    return use.setting()
        .map(
            it ->
                List.of(
                    it.mode().value().id(),
                    it.level().map(Fact::value),
                    it.limit().map(Fact::value)))
        .orElse(List.of());
  }
}
