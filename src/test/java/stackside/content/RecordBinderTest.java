package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Keys that are unknown, missing, empty or of the wrong shape. */
final class RecordBinderTest {

  @Test
  void unknownKey_asksForTheNearOne() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltge: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:76+12: unknown key 'rated-voltge' [unknown-key] | did you mean 'rated-voltage'?");
  }

  @Test
  void unknownKeyNearNothing_listsTheKeys() {
    assertThat(
            Trial.bare()
                .with(
                    "foot-switches.yaml",
                    """
              - {id: twin, name: Twin, pedals: [{colour: blue, does: cut, weight: 3 kg}]}
              """)
                .problems())
        .containsExactly(
            "foot-switches.yaml:1:61+6: unknown key 'weight' [unknown-key] | the keys here are colour, does");
  }

  @Test
  void commaInAnUnquotedText_isExplained() {
    assertThat(
            Trial.bare()
                .with(
                    "foot-switches.yaml",
                    """
              - {id: twin, name: Twin, by the wall, pedals: [{colour: blue, does: cut}]}
              """)
                .problems())
        .containsExactly(
            "foot-switches.yaml:1:26+11: unknown key 'by the wall' [unknown-key] | put a text with a comma or a colon in it in quotes");
  }

  @Test
  void missingKey_pointsAtTheGroup() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:3+83: 'kind' is missing [missing-key] | add the key 'kind' with its value");
  }

  @Test
  void missingId_pointsAtTheGroup() {
    assertThat(
            Trial.instruments(
                    """
              - {name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:3+81: 'id' is missing [missing-key] | add the key 'id' with its value");
  }

  @Test
  void keyWithoutValue_isRefused() {
    assertThat(Trial.drill("title: No effect", "title:").problems())
        .containsExactly(
            "drills/no-effect.yaml:2:7+0: 'title' has no value [no-value] | write its value, or remove the key if it is optional");
  }

  @Test
  void nullValue_isRefused() {
    assertThat(Trial.drill("No effect", "~").problems())
        .containsExactly(
            "drills/no-effect.yaml:2:8+1: 'title' has no value [no-value] | write its value, or remove the key if it is optional");
  }

  @Test
  void emptyRequiredList_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "foot-switches.yaml",
                    """
              - {id: twin, name: Twin, pedals: []}
              """)
                .problems())
        .containsExactly(
            "foot-switches.yaml:1:34+2: 'pedals' is empty [no-value] | write at least one");
  }

  @Test
  void textWhereAListBelongs_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "lesions.yaml",
                    """
              steps: [{id: resection, name: Resection}]
              lesions: [{id: flat, name: Flat, steps: resection}]
              """)
                .problems())
        .containsExactly(
            "lesions.yaml:2:41+9: 'steps' takes a list, and this is something else [wrong-shape] | put the items in square brackets, or each on a line of its own after a hyphen");
  }

  @Test
  void listWhereATextBelongs_isRefused() {
    assertThat(Trial.drill("No effect", "[No, effect]").problems())
        .containsExactly(
            "drills/no-effect.yaml:2:8+12: 'title' takes one value, and this is a list or a group of keys [wrong-shape] | keep one value; put a text with ': ' or brackets in it in quotes");
  }

  @Test
  void textWhereAGroupBelongs_isRefused() {
    assertThat(Trial.drill("{tone: usual}", "quiet").problems())
        .containsExactly(
            "drills/no-effect.yaml:3:7+5: 'sign' takes keys of its own, and this is something else [wrong-shape] | write each key with its value on a line of its own, further in");
  }

  @Test
  void textAsAnItem_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - snare
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:3+5: an item of this file takes keys of its own, and this is something else [wrong-shape] | write each key with its value on a line of its own, further in");
  }

  @Test
  void groupWhereTheFileIsAList_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              id: oval-snare-15
              name: Oval snare
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:1+17: this file takes a list, and this is something else [wrong-shape] | put the items in square brackets, or each on a line of its own after a hyphen");
  }

  @Test
  void listWhereTheFileIsAGroup_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.DRILL_FILE,
                    """
              - id: no-effect
              """)
                .problems())
        .containsExactly(
            "drills/no-effect.yaml:1:1+1: this file takes keys of its own, and this is something else [wrong-shape] | write each key with its value on a line of its own, further in");
  }

  @Test
  void severalMistakes_areAllReported() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: odd, connector: pin-3, rated-voltage: 2000}
              - {id: B, name: , kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:47+3: 'odd' is not a choice for 'kind' [unknown-word] | choose 'monopolar', 'bipolar' or 'argon'",
            "instruments.yaml:1:85+4: '2000' has no unit [not-a-quantity] | write a peak voltage as a plain number, a space and V peak or kV peak",
            "instruments.yaml:2:8+1: 'B' is not the id of an instrument [not-an-id] | an id is made of small letters and digits with single hyphens between, at most 60 in all",
            "instruments.yaml:2:16+0: 'name' has no value [no-value] | write its value, or remove the key if it is optional");
  }

  @Test
  void profileWithTwoAnswers_isRefused() {
    assertThat(
            Trial.withMachine()
                .with(
                    "profiles/cordgrass.yaml",
                    """
              machine: cordgrass
              profiles:
                - {id: flat, lesions: [flat], sites: [caecum], step: resection, cold: Cold snare., not-approved: Refer.}
              """)
                .problems())
        .containsExactly(
            "profiles/cordgrass.yaml:3:5+102: the profile gives 2 answers [no-sense] | keep exactly one of 'settings', 'cold' and 'not-approved'");
  }

  @Test
  void profileWithoutAnAnswer_isRefused() {
    assertThat(
            Trial.withMachine()
                .with(
                    "profiles/cordgrass.yaml",
                    """
              machine: cordgrass
              profiles:
                - {id: flat, lesions: [flat], sites: [caecum], step: resection}
              """)
                .problems())
        .containsExactly(
            "profiles/cordgrass.yaml:3:5+61: the profile gives no answer [no-sense] | keep exactly one of 'settings', 'cold' and 'not-approved'");
  }

  @Test
  void levelInTwoWays_isRefused() {
    assertThat(
            Trial.machine(
                    "continuous, power-limit:",
                    "continuous, level: {name: rung, from: 1, to: 4, names: [low]}, power-limit:")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:10:98+42: a level needs either 'from' and 'to', or 'names' [no-sense] | use one form or the other");
  }
}
