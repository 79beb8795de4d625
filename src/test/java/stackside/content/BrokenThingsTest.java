package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stackside.model.Broken;
import stackside.model.Unit;

/** One mistake is one problem: whatever uses a broken thing is broken without a word of its own. */
final class BrokenThingsTest {
  private static final String PROFILES =
      """
      machine: cordgrass
      profiles:
        - id: flat
          lesions: [flat]
          sites: [caecum]
          step: resection
          settings:
            instrument: snare
            socket: mono-1
            yellow: {mode: cut, limit: 40 W}
            blue: unassigned
      """;
  private static final String SNARE =
      "- {id: snare, name: Snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}\n";

  private static Trial trial() {
    return Trial.withMachine()
        .with("instruments.yaml", SNARE)
        .with("assets.csv", Trial.ASSETS)
        .with("profiles/cordgrass.yaml", PROFILES)
        .with("handbook/a.md", "# A\n\n[here](socket:cordgrass/mono-1) [there](profile:flat)\n");
  }

  private static List<String> broken(Trial trial) {
    return trial.read().unit().orElseThrow().broken().stream()
        .map(Broken::id)
        .map(Object::toString)
        .toList();
  }

  @Test
  void soundUnit_hasNothingBroken() {
    assertThat(trial().problems()).isEmpty();
    assertThat(broken(trial())).isEmpty();
  }

  @Test
  void brokenInstrument_breaksItsProfileQuietly() {
    Trial trial = trial().with("instruments.yaml", SNARE.replace("2000 V peak", "2000"));

    assertThat(trial.messages()).containsExactly("'2000' has no unit");
    assertThat(broken(trial)).containsExactly("instrument:snare", "profile:flat");
  }

  @Test
  void brokenThing_keepsItsProblems() {
    Unit unit =
        trial()
            .with("instruments.yaml", SNARE.replace("2000 V peak", "2000"))
            .read()
            .unit()
            .orElseThrow();

    assertThat(unit.broken().get(0).problems()).hasSize(1);
    assertThat(unit.broken().get(1).problems()).isEmpty();
  }

  @Test
  void mistakeInAnOptionalKey_breaksTheThingToo() {
    Trial trial =
        trial().with(Trial.MACHINE_FILE, Trial.MACHINE.replace("power-limit", "power-limt"));

    assertThat(trial.messages()).containsExactly("unknown key 'power-limt'");
    assertThat(broken(trial))
        .contains("machine:cordgrass", "mode:cordgrass/cut", "asset:EQ-0417", "profile:flat");
  }

  @Test
  void brokenMachine_takesItsSocketsAlong() {
    Trial trial =
        trial().with(Trial.MACHINE_FILE, Trial.MACHINE.replace("monitor: none", "monitor: no"));

    assertThat(trial.messages()).containsExactly("'no' is not a choice for 'monitor'");
    assertThat(broken(trial)).contains("socket:cordgrass/mono-1", "profile:flat");
  }

  @Test
  void unreadableMachineFile_isOneProblem() {
    Trial trial = trial().with(Trial.MACHINE_FILE, "id: [\n");

    assertThat(trial.problems()).hasSize(1);
    assertThat(broken(trial)).contains("machine:cordgrass", "asset:EQ-0417", "profile:flat");
  }

  @Test
  void unreadableListFile_isOneProblem() {
    assertThat(trial().with("instruments.yaml", "- [\n").problems()).hasSize(1);
    assertThat(trial().with("sites.yaml", "sites: {\n").problems()).hasSize(1);
    assertThat(trial().with("lesions.yaml", "").problems()).hasSize(1);
    assertThat(trial().with("assets.csv", "asset\n").messages())
        .allMatch(message -> message.startsWith("the column"));
    assertThat(trial().with("profiles/cordgrass.yaml", "machine: a: b\n").problems()).hasSize(1);
  }

  @Test
  void idThatCannotBeRead_bringsNoUnknownReference() {
    Trial trial = trial().with("instruments.yaml", SNARE.replace("id: snare", "id: Snare"));

    assertThat(trial.messages()).containsExactly("'Snare' is not the id of an instrument");
    assertThat(broken(trial)).containsExactly("profile:flat");
  }

  @Test
  void unknownReference_breaksWhatRefers() {
    Trial trial = trial().with("profiles/cordgrass.yaml", PROFILES.replace("mono-1", "mono-9"));

    assertThat(trial.messages()).containsExactly("machine 'cordgrass' has no socket 'mono-9'");
    assertThat(broken(trial)).containsExactly("profile:flat");
  }

  @Test
  void linkToNothing_leavesTheTextWhole() {
    Trial trial = trial().with("handbook/a.md", "# A\n\n[here](drill:none)\n");

    assertThat(trial.messages()).containsExactly("there is no drill 'none'");
    assertThat(broken(trial)).isEmpty();
    assertThat(trial.read().unit().orElseThrow().handbook()).hasSize(1);
  }

  @Test
  void linkToABrokenThing_isNoProblem() {
    Trial trial =
        trial()
            .with(Trial.DRILL_FILE, Trial.DRILL.replace("escalate: yes", "escalate: y"))
            .with("handbook/a.md", "# A\n\n[here](drill:no-effect)\n");

    assertThat(trial.messages()).containsExactly("'y' is neither yes nor no");
  }

  @Test
  void twinIds_breakBothAndBringNothingElse() {
    Trial trial = trial().with("instruments.yaml", SNARE + SNARE);

    assertThat(trial.problems()).hasSize(1);
    assertThat(broken(trial)).containsExactly("instrument:snare", "profile:flat");
  }

  @Test
  void idUnlikeTheFilesName_isBrokenUnderBoth() {
    Trial trial =
        trial().with(Trial.MACHINE_FILE, Trial.MACHINE.replace("id: cordgrass", "id: cordgras"));

    assertThat(trial.problems()).hasSize(1);
    assertThat(broken(trial))
        .contains("machine:cordgras", "machine:cordgrass", "asset:EQ-0417", "profile:flat");
  }

  @Test
  void rowOfABrokenAsset_isLeftOutQuietly() {
    Trial trial =
        trial()
            .with("assets.csv", Trial.ASSETS.replace("in use", "in us"))
            .with("service-events.csv", "asset,date,event\nEQ-0417,2026-03-02,service\n");

    assertThat(trial.messages()).containsExactly("'in us' is not a choice for 'status'");
    assertThat(trial.read().unit().orElseThrow().serviceEvents()).isEmpty();
  }

  @Test
  void wrongRow_leavesTheOthers() {
    Trial trial =
        trial()
            .with(
                "service-events.csv",
                "asset,date,event\nEQ-0417,today,service\nEQ-0417,2026-03-02,service\n");

    assertThat(trial.messages()).containsExactly("'today' is not a date");
    assertThat(trial.read().unit().orElseThrow().serviceEvents()).hasSize(1);
  }
}
