package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Ids that name nothing, or two things. */
final class ReferencesTest {

  @Test
  void unknownId_asksForTheNearOne() {
    assertThat(
            Trial.bare()
                .with(
                    "lesions.yaml",
                    """
              steps: [{id: resection, name: Resection}]
              lesions: [{id: flat, name: Flat, steps: [resecton]}]
              """)
                .problems())
        .containsExactly(
            "lesions.yaml:2:42+8: there is no step 'resecton' [unknown-reference] | did you mean 'resection'?");
  }

  @Test
  void unknownIdNearNothing_saysWhereSuchThingsAre() {
    assertThat(
            Trial.bare()
                .with(
                    "lesions.yaml",
                    """
              steps: [{id: resection, name: Resection}]
              lesions: [{id: flat, name: Flat, steps: [haemostasis]}]
              """)
                .problems())
        .containsExactly(
            "lesions.yaml:2:42+11: there is no step 'haemostasis' [unknown-reference] | every step is described in 'lesions.yaml'");
  }

  @Test
  void unknownIdWithOtherDigits_isNotGuessed() {
    assertThat(
            Trial.bare()
                .with(
                    "lesions.yaml",
                    """
              steps: [{id: step-1, name: Resection}]
              lesions: [{id: flat, name: Flat, steps: [step-2]}]
              """)
                .problems())
        .containsExactly(
            "lesions.yaml:2:42+6: there is no step 'step-2' [unknown-reference] | every step is described in 'lesions.yaml'");
  }

  @Test
  void unknownSocket_namesTheMachine() {
    assertThat(
            Trial.bare()
                .with(Trial.MACHINE_FILE, Trial.MACHINE + "at-power-on: mno-1\n")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:11:14+5: machine 'cordgrass' has no socket 'mno-1' [unknown-reference] | did you mean 'mono-1'?");
  }

  @Test
  void unknownMachineOfAFile_isOneProblem() {
    assertThat(
            Trial.bare()
                .with("sites.yaml", Trial.SITES)
                .with("lesions.yaml", Trial.LESIONS)
                .with(
                    "profiles/a.yaml",
                    """
              machine: cordgrass
              profiles:
                - {id: flat, lesions: [flat], sites: [caecum], step: resection, cold: Cold snare.}
                - {id: flat-too, lesions: [flat], sites: [caecum], step: resection, cold: Cold snare.}
              """)
                .problems())
        .containsExactly(
            "profiles/a.yaml:1:10+9: there is no machine 'cordgrass' [unknown-reference] | every machine is described in the folder 'machines'");
  }

  @Test
  void idOfTwoKinds_isAmbiguous() {
    assertThat(
            Trial.instruments(
                    """
              - {id: snare, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .with(
                    "cables.yaml",
                    """
              - {id: snare, name: Snare cable, plug: three-pin, connector: pin-3, rated-voltage: 4000 V peak}
              """)
                .with(Trial.DRILL_FILE, Trial.DRILL.replace("plug", "plug, needs: [snare]"))
                .problems())
        .containsExactly(
            "drills/no-effect.yaml:5:41+5: 'snare' is an instrument and a cable [ambiguous-reference] (an instrument of this id: instruments.yaml:1:3) (a cable of this id: cables.yaml:1:3) | give one of the two another id");
  }

  @Test
  void unknownAssetOfEvidence_isAProblem() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.MACHINE_FILE,
                    Trial.MACHINE
                        + "answers: {mains-off: {evidence: {observed: 2026-03-02, asset: EQ-0417, software: \"2.1\"}}}\n")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:11:63+7: there is no asset 'EQ-0417' [unknown-reference] | every asset is described in 'assets.csv'");
  }

  @Test
  void unknownThingOfAPath_isAProblem() {
    assertThat(
            Trial.bare()
                .with(
                    "paths/nurse.yaml",
                    """
              id: nurse
              name: Nurse
              for: Nurses
              reads: [drill:no-effect, drlil:no-effect, drill]
              """)
                .problems())
        .containsExactly(
            "paths/nurse.yaml:4:9+15: there is no drill 'no-effect' [unknown-reference] | every drill is described in the folder 'drills'",
            "paths/nurse.yaml:4:26+15: 'drlil:no-effect' does not name anything in the unit [wrong-link] | did you mean 'drill:'?",
            "paths/nurse.yaml:4:43+5: 'drill' does not name anything in the unit [wrong-link] | write it in the form 'kind:id', with a kind such as machine, drill or handbook");
  }

  @Test
  void aRenamedRole_isToldOnceBesideItsNewName() {
    String row = "2026-03-04,drill:no-effect,3f9a,77c2,lead-nurse,EF,19bd\n";
    assertThat(
            Trial.bare()
                .with("unit.yaml", Trial.unitFile().replace("id: lead-nurse", "id: nurse-lead"))
                .with(Trial.DRILL_FILE, Trial.DRILL)
                .with(
                    "approvals.csv",
                    "date,what,state,basis,role,initials,seal\n"
                        + row
                        + row.replace("19bd", "20be")
                        + row.replace("19bd", "21bf"))
                .problems())
        .hasSize(1)
        .allMatch(problem -> problem.contains("there is no role 'lead-nurse'"))
        .allMatch(problem -> problem.contains("more"))
        .allMatch(problem -> problem.contains("'nurse-lead' stands here"))
        .allMatch(problem -> problem.endsWith("did you mean 'nurse-lead'?"));
  }

  @Test
  void whatIsNamedAsOneKindAndAsOneOfSeveral_isMissingOnce() {
    assertThat(
            Trial.drill("{do: Look at the plug}", "{do: Look at the plug, needs: [lead]}")
                .with(
                    "rooms/room-1.yaml",
                    """
              id: room-1
              name: Room 1
              location: shore
              patients: [adult]
              keeps: {cables: [lead]}
              """)
                .problems())
        .filteredOn(problem -> problem.contains("'lead'"))
        .hasSize(1);
  }

  @Test
  void unknownRoleOfASignature_isAProblem() {
    assertThat(
            Trial.bare()
                .with(
                    "approvals.csv",
                    """
              date,what,state,basis,role,initials,seal
              2026-03-04,drill:no-effect,3f9a,77c2,lead-nurs,EF,19bd
              """)
                .problems())
        .containsExactly(
            "approvals.csv:2:38+9: there is no role 'lead-nurs' [unknown-reference] | did you mean 'lead-nurse'?");
  }
}
