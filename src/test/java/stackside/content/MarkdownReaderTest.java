package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What texts and pages may not hold, each told in words at its place. */
final class MarkdownReaderTest {

  @Test
  void htmlInAPage_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              Text <b>bold</b>

              <div>
              block
              </div>
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:6+3: there is HTML here [raw-html] | write it in Markdown; a sign '<' in a text is written '\\<'",
            "handbook/a.md:3:13+4: there is HTML here [raw-html] | write it in Markdown; a sign '<' in a text is written '\\<'",
            "handbook/a.md:5:1+5: there is HTML here [raw-html] | write it in Markdown; a sign '<' in a text is written '\\<'");
  }

  @Test
  void htmlComment_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              <!-- note -->
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:1+13: there is HTML here [raw-html] | write it in Markdown; a sign '<' in a text is written '\\<'");
  }

  @Test
  void picture_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              See ![plug](plug.png)
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:5+17: a picture cannot be printed here [unusable-markdown] | use plain words, bold, emphasis, code and links of the form [words](target)");
  }

  @Test
  void httpLink_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              [here](http://saltings.example/)
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:8+24: 'http://saltings.example/' is not an address that a page may link to [wrong-link] | link to a thing in the form 'kind:id', or to a full https address");
  }

  @Test
  void scriptLink_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              [here](javascript:alert)
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:8+16: 'javascript:alert' is not an address that a page may link to [wrong-link] | link to a thing in the form 'kind:id', or to a full https address");
  }

  @Test
  void fileLink_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              [here](../rooms/room-2.yaml)
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:8+20: '../rooms/room-2.yaml' is not an address that a page may link to [wrong-link] | link to a thing in the form 'kind:id', or to a full https address");
  }

  @Test
  void linkOfUnknownKind_asksForTheNearOne() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              [here](sokcet:cordgrass/mono-1)
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:8+23: 'sokcet:cordgrass/mono-1' does not name anything in the unit [wrong-link] | did you mean 'socket:'?");
  }

  @Test
  void linkToNothing_isAProblemAtItsLine() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              First.
              Then [here](handbook:b).
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:4:13+10: there is no handbook page 'b' [unknown-reference] | every handbook page is described in the folder 'handbook'");
  }

  @Test
  void linkToABadId_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              [here](<machine:Cord grass>)
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:1+6: this link is not complete [wrong-link] | write [words](target) without a space in the target");
  }

  @Test
  void linkWithoutWords_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              [](handbook:a)
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:4+10: this link has no words to show [wrong-link] | write the words between the square brackets");
  }

  @Test
  void referenceLink_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              [here][there]

              [there]: https://saltings.example/
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:1+13: a link by reference cannot be printed here [unusable-markdown] | use plain words, bold, emphasis, code and links of the form [words](target)",
            "handbook/a.md:5:1+34: a link by reference cannot be printed here [unusable-markdown] | use paragraphs, headings, lists, tables and figures only");
  }

  @Test
  void quotationAndCode_areRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              > said

                  code

              ***

              ```
              more
              ```
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:1+6: a quotation block cannot be printed here [unusable-markdown] | use paragraphs, headings, lists, tables and figures only",
            "handbook/a.md:5:5+4: a block of code cannot be printed here [unusable-markdown] | use paragraphs, headings, lists, tables and figures only",
            "handbook/a.md:7:1+3: a line across the page cannot be printed here [unusable-markdown] | use paragraphs, headings, lists, tables and figures only",
            "handbook/a.md:9:1+3: a block of code cannot be printed here [unusable-markdown] | use paragraphs, headings, lists, tables and figures only");
  }

  @Test
  void pageWithoutATitle_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              No title here.
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:1:1+0: the page does not begin with its title [missing-title] | write '# ' and the title on the first line");
  }

  @Test
  void pageWhoseTitleIsASecondHeading_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              ## A
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:1:1+0: the page does not begin with its title [missing-title] | write '# ' and the title on the first line");
  }

  @Test
  void figureWithoutAName_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              ```figure
              ```
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:3:1+3: a figure without a name [unusable-markdown] | write the figure's name on the first line of the block");
  }

  @Test
  void figureAboutNothing_isAProblemAtItsLine() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/a.md",
                    """
              # A

              ```figure
              output
              mode:cordgrass/cut
              ```
              """)
                .problems())
        .containsExactly(
            "handbook/a.md:5:1+18: there is no mode 'cordgrass/cut' [unknown-reference] | every mode is described in the machine's file in 'machines'");
  }

  @Test
  void linkInATextBlock_isFoundOnItsLine() {
    assertThat(
            Trial.withMachine()
                .with(
                    "profiles/a.yaml",
                    """
              machine: cordgrass
              profiles:
                - id: flat
                  lesions: [flat]
                  sites: [caecum]
                  step: resection
                  cold: Cold snare.
                  technique: |
                    Lift.

                    Then see [here](drill:none).
                  caution: >
                    Keep away from
                    [clips](drill:clips).
              """)
                .problems())
        .containsExactly(
            "profiles/a.yaml:11:23+10: there is no drill 'none' [unknown-reference] | every drill is described in the folder 'drills'",
            "profiles/a.yaml:14:15+11: there is no drill 'clips' [unknown-reference] | every drill is described in the folder 'drills'");
  }

  @Test
  void linkInAShortText_isFoundInItsLine() {
    assertThat(
            Trial.withMachine()
                .with(
                    "profiles/a.yaml",
                    """
              machine: cordgrass
              profiles:
                - {id: flat, lesions: [flat], sites: [caecum], step: resection, cold: Cold snare., technique: "See [here](drill:none)", caution: See <b>}
              """)
                .problems())
        .containsExactly(
            "profiles/a.yaml:3:109+10: there is no drill 'none' [unknown-reference] | every drill is described in the folder 'drills'",
            "profiles/a.yaml:3:136+3: there is HTML here [raw-html] | write it in Markdown; a sign '<' in a text is written '\\<'");
  }
}
