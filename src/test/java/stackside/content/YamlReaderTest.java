package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What YAML files may not hold, each told in words at its place. */
final class YamlReaderTest {

  @Test
  void keyWrittenTwice_namesTheFirstLine() {
    assertThat(
            Trial.instruments(
                    """
              - id: oval-snare-15
                name: Oval snare
                kind: monopolar
                connector: pin-3
                name: Round snare
                rated-voltage: 2000 V peak
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:5:3+4: duplicate key 'name', first on line 2 [written-twice] (first written here: instruments.yaml:2:3) | keep one of the two lines");
  }

  @Test
  void keyWrittenTwiceInAMap_namesTheFirstLine() {
    assertThat(
            Trial.bare()
                .with("unit.yaml", Trial.unitFile() + "words: {socket: jack, socket: outlet}\n")
                .problems())
        .containsExactly(
            "unit.yaml:17:23+6: duplicate key 'socket', first on line 17 [written-twice] (first written here: unit.yaml:17:9) | keep one of the two lines");
  }

  @Test
  void alias_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: *x, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:29+2: there is an alias here [alias] | write the value out, or put a text that begins with '*' in quotes");
  }

  @Test
  void anchor_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: &x Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:29+1: there is an anchor here [alias] | write the value out, or put a text that begins with '&' in quotes");
  }

  @Test
  void mergeKey_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - <<: {id: x}
                id: oval-snare-15
                name: Oval snare
                kind: monopolar
                connector: pin-3
                rated-voltage: 2000 V peak
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:3+2: there is a merge key here [alias] | write the keys out where they belong");
  }

  @Test
  void tag_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: !!str 15, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:29+1: there is a tag here [tag] | remove the word that begins with '!', or put the text in quotes");
  }

  @Test
  void ownTag_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              !list
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:1+1: there is a tag here [tag] | remove the word that begins with '!', or put the text in quotes");
  }

  @Test
  void secondDocument_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              ---
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:2:1+3: a second document begins here [several-documents] | keep one document in a file, without lines of '---' between");
  }

  @Test
  void tab_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - id: oval-snare-15
              \tname: Oval snare
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:2:1+1: there is a tab here [tab-in-yaml] | type spaces instead of every tab in this file");
  }

  @Test
  void fiftyOneBrackets_areRefused() {
    assertThat(Trial.bare().with("instruments.yaml", "[".repeat(60) + "]".repeat(60)).problems())
        .containsExactly(
            "instruments.yaml:1:52+1: lists or groups nest more than 50 deep here [nested-too-deep] | look for brackets that are not closed");
  }

  @Test
  void secondColonInALine_isToldInPlainWords() {
    assertThat(Trial.drill("No effect", "No effect: first look").problems())
        .containsExactly(
            "drills/no-effect.yaml:2:17+1: there is a second colon in this line [not-yaml] | put a text with ': ' in it in quotes");
  }

  @Test
  void lineWithoutAColon_isToldInPlainWords() {
    assertThat(Trial.bare().with(Trial.DRILL_FILE, Trial.DRILL + "never\nfor: all\n").problems())
        .containsExactly(
            "drills/no-effect.yaml:7:1+1: this line has no colon after its key [not-yaml] | write 'key: value'");
  }

  @Test
  void quoteNeverClosed_pointsWhereItOpens() {
    assertThat(Trial.drill("make-safe: Foot", "make-safe: \"Foot").problems())
        .containsExactly(
            "drills/no-effect.yaml:4:12+1: a quotation mark is opened here and never closed [not-yaml] | close it");
  }

  @Test
  void listNeverClosed_pointsWhereItOpens() {
    assertThat(
            Trial.bare()
                .with(
                    "sites.yaml",
                    """
              sites:
                - {id: caecum, name: Caecum, also: [cecum, tract: lower, wall: thin}
              """)
                .problems())
        .containsExactly(
            "sites.yaml:2:70+1: a list in square brackets is not closed before here, or lacks a comma [not-yaml] ('[' opened here: sites.yaml:2:38) | close the bracket, write ',' between two of its items, or put a text with a comma or bracket in quotes");
  }

  @Test
  void groupNeverClosed_pointsWhereItOpens() {
    assertThat(
            Trial.bare()
                .with(
                    "sites.yaml",
                    """
              sites:
                - {id: caecum, name: Caecum, tract: lower, wall: thin
                - {id: rectum, name: Rectum, tract: lower, wall: thick}
              """)
                .problems())
        .containsExactly(
            "sites.yaml:3:5+1: a group in curly brackets is not closed before here, or lacks a comma [not-yaml] ('{' opened here: sites.yaml:2:5) | close the bracket, write ',' between two of its keys, or put a text with a comma or bracket in quotes");
  }

  @Test
  void lineFurtherLeft_isToldInPlainWords() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.DRILL_FILE,
                    """
                id: no-effect
              title: No effect
              """)
                .problems())
        .containsExactly(
            "drills/no-effect.yaml:2:1+1: this line does not fit under the lines above it [not-yaml] | begin keys of one group, and hyphens of one list, in the same column");
  }

  @Test
  void lineFurtherRight_isToldInPlainWords() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.DRILL_FILE,
                    """
              id: no-effect
                title: No effect
              """)
                .problems())
        .containsExactly(
            "drills/no-effect.yaml:2:8+1: this line does not fit under the line above it [not-yaml] | begin keys of one group, and hyphens of one list, in the same column");
  }

  @Test
  void textThatBeginsWithAnAt_isToldInPlainWords() {
    assertThat(Trial.drill("No", "@ no").problems())
        .containsExactly(
            "drills/no-effect.yaml:2:8+1: a text cannot begin with this character unless it is in quotes [not-yaml] | put the text in quotes");
  }

  @Test
  void textThatBeginsWithAPercent_isToldInPlainWords() {
    assertThat(Trial.drill("No", "%no").problems())
        .containsExactly(
            "drills/no-effect.yaml:2:8+1: a text cannot begin with this character unless it is in quotes [not-yaml] | put the text in quotes");
  }

  @Test
  void backslashInDoubleQuotes_isToldInPlainWords() {
    assertThat(Trial.drill("No effect", "\"No \\effect \\q\"").problems())
        .containsExactly(
            "drills/no-effect.yaml:2:21+1: a backslash in double quotes begins something unknown here [not-yaml] | put the text in single quotes");
  }

  @Test
  void itemUnderAValue_isToldInPlainWords() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.DRILL_FILE,
                    """
              id: no-effect
              title: No effect
                - do: this
              """)
                .problems())
        .containsExactly(
            "drills/no-effect.yaml:3:7+1: this line does not fit under the line above it [not-yaml] | begin keys of one group, and hyphens of one list, in the same column");
  }

  @Test
  void listAsAKey_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {[a, b]: c}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:4+6: a key is a single word, and this is a list or a group [wrong-shape] | look for a bracket that is too early");
  }

  @Test
  void columnBehindARareCharacter_countsAsEditorsDo() {
    assertThat(
            Trial.instruments(
                    """
              - {name: "𝕊nare", id: oval-snare-15, kind: odd, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:45+3: 'odd' is not a choice for 'kind' [unknown-word] | choose 'monopolar', 'bipolar' or 'argon'");
  }
}
