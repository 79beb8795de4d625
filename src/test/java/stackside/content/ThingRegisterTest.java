package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Ids that are none, or that two things carry. */
final class ThingRegisterTest {

  @Test
  void idThatIsNoSlug_saysWhatAnIdIs() {
    assertThat(
            Trial.instruments(
                    """
              - {id: Oval Snare, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:8+10: 'Oval Snare' is not the id of an instrument [not-an-id] | an id is made of small letters and digits with single hyphens between, at most 60 in all");
  }

  @Test
  void assetNumberWithASpace_saysWhatANumberIs() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              EQ 0417,cordgrass,2.1,in use,2024-05-02
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:1+7: 'EQ 0417' is not the id of an asset [not-an-id] | an asset number is made of letters and digits with single hyphens between, at most 60 in all");
  }

  @Test
  void sameIdTwice_namesBothPlaces() {
    assertThat(
            Trial.instruments(
                    """
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              - {id: oval-snare-15, name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:2:8+13: duplicate instrument 'oval-snare-15', first on line 1 [written-twice] (the first of this id: instruments.yaml:1:3) | give one of the two another id, or remove it");
  }

  @Test
  void sameIdInTwoFiles_namesBothPlaces() {
    assertThat(
            Trial.withMachine()
                .with(
                    "profiles/a.yaml",
                    """
              machine: cordgrass
              profiles:
                - {id: flat, lesions: [flat], sites: [caecum], step: resection, cold: Cold snare.}
              """)
                .with(
                    "profiles/b.yaml",
                    """
              machine: cordgrass
              profiles:
                - {id: flat, lesions: [flat], sites: [caecum], step: resection, cold: Cold snare.}
              """)
                .problems())
        .containsExactly(
            "profiles/b.yaml:3:10+4: duplicate profile 'flat', first in profiles/a.yaml on line 3 [written-twice] (the first of this id: profiles/a.yaml:3:5) | give one of the two another id, or remove it");
  }

  @Test
  void sameSocketTwice_namesBothPlaces() {
    assertThat(
            Trial.machine(
                    "monopolar}\nselects-socket:",
                    "monopolar}\n  - {id: mono-1, label: \"2\", name: Monopolar, place: row 1 column 2, kind: monopolar}\nselects-socket:")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:8:10+6: duplicate socket 'mono-1', first on line 7 [written-twice] (the first of this id: machines/cordgrass.yaml:7:5) | give one of the two another id, or remove it");
  }

  @Test
  void sameLampTwice_namesBothPlaces() {
    assertThat(
            Trial.bare()
                .with(
                    Trial.MACHINE_FILE,
                    Trial.MACHINE
                        + "lamps:\n  - {id: plate-lamp, name: Plate}\n  - {id: plate-lamp, name: Mains}\n")
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:13:10+10: duplicate id 'plate-lamp', first on line 12 [written-twice] (the first of this id: machines/cordgrass.yaml:12:10) | give one of the two another id, or remove it");
  }

  @Test
  void idUnlikeTheFilesName_isRefused() {
    assertThat(
            Trial.bare()
                .with(Trial.MACHINE_FILE, Trial.MACHINE.replace("cordgrass", "cordgrass-tow"))
                .with("assets.csv", Trial.ASSETS)
                .problems())
        .containsExactly(
            "machines/cordgrass.yaml:1:5+13: the id is 'cordgrass-tow' and the file is named 'cordgrass' [file-name-differs] | give the file and the id the same name");
  }

  @Test
  void fileNameThatIsNoId_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "handbook/What Current Does.md",
                    """
              # What current does
              """)
                .problems())
        .containsExactly(
            "handbook/What Current Does.md:1:1+0: 'What Current Does' is not the id of a handbook page [not-an-id] | name the file with small letters and digits, with single hyphens between");
  }

  @Test
  void idOfAList_isRefused() {
    assertThat(
            Trial.instruments(
                    """
              - {id: [a], name: Oval snare, kind: monopolar, connector: pin-3, rated-voltage: 2000 V peak}
              """)
                .problems())
        .containsExactly(
            "instruments.yaml:1:8+3: an id is one word, and this is a list or a group of keys [wrong-shape] | write one id");
  }
}
