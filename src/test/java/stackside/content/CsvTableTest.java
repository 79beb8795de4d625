package stackside.content;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What CSV files may not hold, each told by line and column. */
final class CsvTableTest {

  @Test
  void unknownColumn_asksForTheNearOne() {
    assertThat(
            Trial.bare()
                .with(
                    "assets.csv",
                    """
              asset,machine,softwre,status,since
              """)
                .problems())
        .containsExactly(
            "assets.csv:1:15+7: unknown column 'softwre' [unknown-column] | did you mean 'software'?");
  }

  @Test
  void missingColumn_isNamed() {
    assertThat(
            Trial.bare()
                .with(
                    "assets.csv",
                    """
              asset,machine,software,since
              EQ-0417,cordgrass,2.1,2024-05-02
              """)
                .problems())
        .containsExactly(
            "assets.csv:1:1+28: the column 'status' is missing [missing-column] | the columns here are asset, machine, software, status, since");
  }

  @Test
  void columnTwice_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "assets.csv",
                    """
              asset,machine,software,status,since,status
              """)
                .problems())
        .containsExactly(
            "assets.csv:1:37+6: the column 'status' is there twice [written-twice] | remove one of the two columns");
  }

  @Test
  void columnWithoutName_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "assets.csv",
                    """
              asset,machine,software,status,since,
              """)
                .problems())
        .containsExactly(
            "assets.csv:1:37+0: a column has no name [unknown-column] | the columns here are asset, machine, software, status, since");
  }

  @Test
  void semicolons_areExplained() {
    assertThat(
            Trial.bare()
                .with(
                    "assets.csv",
                    """
              asset;machine;software;status;since
              EQ-0417;cordgrass;2.1;in use;2024-05-02
              """)
                .problems())
        .containsExactly(
            "assets.csv:1:1+35: semicolons stand between the cells, not commas, here and in 1 more line [not-csv] | save the sheet as CSV with commas");
  }

  @Test
  void tabsAndSemicolonsInManyRows_areOneMistakeWithTheirNumber() {
    String rows = "EQ-1;cordgrass;2.1;in use;2024-05-02\nEQ-2;cordgrass;2.1;in use;2024-05-02\n";
    assertThat(Trial.assets("asset,machine,software,status,since\n" + rows).problems())
        .containsExactly(
            "assets.csv:2:1+36: semicolons stand between the cells, not commas, here and in 1 more line [not-csv] | save the sheet as CSV with commas");
    assertThat(
            Trial.assets("asset,machine,software,status,since\n" + rows.replace(';', ','))
                .with(
                    "output-checks.csv",
                    """
                    asset,date,mode,level,limit,load,watts,method,initials
                    EQ-1,2026-05-20,cut,,40 W,500 ohm,38 W,Analyser,NT
                    """
                        .replace(',', '\t'))
                .problems())
        .contains(
            "output-checks.csv:1:1+54: tabs stand between the cells, not commas, here and in 1 more line [not-csv] | save the sheet as CSV with commas");
  }

  @Test
  void rowsPastedTwice_areOneMistakeWithTheirNumber() {
    String sheet =
        """
        asset,machine,software,status,since
        EQ-1,cordgrass,2.1,in use,2024-05-02
        EQ-2,cordgrass,2.1,in use,2024-05-02
        """;
    assertThat(Trial.assets(sheet.repeat(400)).problems())
        .containsExactly(
            "assets.csv:4:1+35: this row is already in the sheet, on line 1, and so are 1196 more rows [written-twice] (first written here: assets.csv:1:1) | remove the rows that were pasted a second time");
  }

  @Test
  void aDecimalComma_isNamedThoughItMakesACellTooMany() {
    assertThat(
            Trial.bare()
                .with(
                    "output-checks.csv",
                    """
              asset,date,mode,level,limit,load,watts,method,initials
              EQ-1,2026-05-20,cut,2,60 W,500 ohm,57,5 W,Analyser,NT
              """)
                .problems())
        .containsExactly(
            "output-checks.csv:2:36+6: '57,5 W' has a decimal comma [not-a-quantity] | write '57.5 W': a point, not a comma");
  }

  @Test
  void aTextInCurlyMarks_isNamedThoughItMakesACellTooMany() {
    assertThat(
            Trial.bare()
                .with(
                    "output-checks.csv",
                    """
              asset,date,mode,level,limit,load,watts,method,initials
              EQ-1,2026-05-20,cut,2,60 W,500 ohm,57 W,“Analyser, new”,NT
              """)
                .problems())
        .containsExactly(
            "output-checks.csv:2:41+9: there is a curly quotation mark here, where a straight one belongs [curly-quotation-mark] | put the text between straight quotation marks, \" or '");
  }

  @Test
  void rowWithTooManyCells_isRefused() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              EQ-0417,cordgrass,2.1,in use,2024-05-02,and more
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:1+48: this row has 6 cells and the header row has 5 [not-csv] | put a text with a comma in double quotes, and keep a comma for each empty cell");
  }

  @Test
  void rowWithTooFewCells_isRefused() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              EQ-0417,cordgrass,2.1,in use
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:1+28: this row has 4 cells and the header row has 5 [not-csv] | put a text with a comma in double quotes, and keep a comma for each empty cell");
  }

  @Test
  void quoteNeverClosed_pointsWhereItOpens() {
    assertThat(
            Trial.bare()
                .with(
                    "assets.csv",
                    """
              asset,machine,software,status,since
              EQ-0417,"cordgrass,2.1,in use,2024-05-02
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:9+1: a double quote is opened here and never closed [not-csv] | close it, or write each double quote inside a text twice");
  }

  @Test
  void textBehindAQuote_isRefused() {
    assertThat(
            Trial.bare()
                .with(
                    "assets.csv",
                    """
              asset,machine,software,status,since
              EQ-0417,"cordgrass"-two,2.1,in use,2024-05-02
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:20+1: text follows a closing double quote [not-csv] | put the whole text in double quotes, and write each double quote inside it twice");
  }

  @Test
  void emptyCell_isRefusedWhereAValueBelongs() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              EQ-0417,cordgrass,,in use,2024-05-02
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:19+0: 'software' has no value [no-value] | write its value, or remove the key if it is optional");
  }

  @Test
  void wrongCell_isFoundByLineAndColumn() {
    assertThat(
            Trial.assets(
                    """
              asset,machine,software,status,since
              EQ-0417,"cordgrass",2.1,"in
              use, or so",2024-05-02
              EQ-0418,cordgrass,2.1,in user,2024-05-02
              """)
                .problems())
        .containsExactly(
            "assets.csv:2:25+3: 'in use, or so' is not a choice for 'status' [unknown-word] | choose 'in use', 'spare', 'on loan', 'mobile' or 'quarantined'",
            "assets.csv:4:23+7: 'in user' is not a choice for 'status' [unknown-word] | did you mean 'in use'?");
  }

  @Test
  void levelOfAnUnassignedPedal_isRefused() {
    assertThat(
            Trial.bare()
                .with(Trial.MACHINE_FILE, Trial.MACHINE)
                .with("assets.csv", Trial.ASSETS)
                .with(
                    "program-readings.csv",
                    """
              asset,date,slot,shown-as,socket,pedal,mode,level,limit,initials
              EQ-0417,2026-03-02,3,EMR,mono-1,yellow,unassigned,2,,AB
              """)
                .problems())
        .containsExactly(
            "program-readings.csv:2:51+1: an unassigned pedal has a level here, '2' [no-sense] | write the mode that was shown, or leave the level empty");
  }
}
