package stackside.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.StoredProgram;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds profiles that expect something else of a program slot than the others of their machine. */
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

  /** What a profile expects its slot to hold. */
  private record Contents(Object shownAs, Object socket, Object yellow, Object blue) {

    static Contents of(Profile profile) {
      Settings settings = profile.settings().orElseThrow();
      return new Contents(
          settings.program().orElseThrow().shownAs().value(),
          settings.socket().value().id(),
          contents(settings.yellow()),
          contents(settings.blue()));
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

    List<String> differences(Contents other) {
      List<String> found = new ArrayList<>();
      compare(found, "another name on the display", shownAs, other.shownAs);
      compare(found, "another socket", socket, other.socket);
      compare(found, "another setting on yellow", yellow, other.yellow);
      compare(found, "another setting on blue", blue, other.blue);
      return found;
    }

    private static void compare(List<String> found, String words, Object one, Object other) {
      if (!one.equals(other)) {
        found.add(words);
      }
    }
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (Machine machine : analysis.unit().machines()) {
      analysis.unit().profilesOn(machine).stream()
          .filter(SlotWithTwoContents::isClear)
          .collect(
              Collectors.groupingBy(
                  it -> it.settings().orElseThrow().program().orElseThrow().slot().value(),
                  LinkedHashMap::new,
                  Collectors.toList()))
          .values()
          .forEach(same -> found.addAll(odd(same)));
    }
    return found;
  }

  /** A setting that cannot be is a mistake of its own. */
  private static boolean isClear(Profile profile) {
    return profile
        .settings()
        .filter(it -> it.program().isPresent() && it.belongTogether())
        .filter(it -> it.assigned().stream().allMatch(PedalSetting::canBeSet))
        .isPresent();
  }

  /** Those that differ from what most expect; of equal numbers, from what the first expects. */
  private static List<Problem> odd(List<Profile> same) {
    Map<Contents, List<Profile>> views =
        same.stream()
            .collect(Collectors.groupingBy(Contents::of, LinkedHashMap::new, Collectors.toList()));
    Profile usual = same.get(0);
    for (List<Profile> view : views.values()) {
      if (view.size() > views.getOrDefault(Contents.of(usual), List.of()).size()) {
        usual = view.get(0);
      }
    }
    List<Problem> found = new ArrayList<>();
    for (Profile profile : same) {
      List<String> differences = Contents.of(profile).differences(Contents.of(usual));
      if (!differences.isEmpty()) {
        found.add(problem(profile, usual, differences));
      }
    }
    return found;
  }

  private static Problem problem(Profile odd, Profile usual, List<String> differences) {
    StoredProgram program = odd.settings().orElseThrow().program().orElseThrow();
    StoredProgram other = usual.settings().orElseThrow().program().orElseThrow();
    return FAULT
        .at(
            program.slot().at(),
            "profile '%s' expects slot %s with %s, and a slot holds one program"
                .formatted(usual.id().slug(), program.slot().value(), Wording.list(differences)))
        .note(other.slot().at(), "the other profile")
        .help("give one of them a slot of its own, or make the two agree");
  }
}
