package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.content.ContentReader;
import stackside.derive.signed.Approvals;
import stackside.derive.standing.Standing;
import stackside.model.Unit;

/** What is said of readings, service events and measurements, in a unit lead's words. */
final class OpenItemTest {

  private static final Path BASE = Path.of("src/test/resources/units/base");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String READINGS =
      "asset,date,slot,shown-as,socket,pedal,mode,level,limit,initials\n";
  private static final String R_YELLOW = "EMR R,mono-1,yellow,pulsed-cut,2,60 W,AB\n";
  private static final String R_BLUE = "EMR R,mono-1,blue,brisk,1,40 W,AB\n";
  private static final String L_YELLOW = "EMR L,mono-1,yellow,pulsed-cut,2,80 W,AB\n";
  private static final String L_BLUE = "EMR L,mono-1,blue,brisk,1,45 W,AB\n";

  @TempDir Path content;

  @BeforeEach
  void copyTheBaseUnit() throws IOException {
    try (Stream<Path> files = Files.walk(BASE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = content.resolve(BASE.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  private List<String> said(String about) throws IOException {
    Unit unit = ContentReader.read(content).unit().orElseThrow();
    Standing standing = Standing.of(unit, Approvals.none(), DAY);
    return OpenItem.told(OpenItem.of(unit, standing, Approvals.none()))
        .filter(line -> line.contains(about))
        .toList();
  }

  private void write(String file, String... lines) throws IOException {
    Files.writeString(content.resolve(file), String.join("", lines));
  }

  @Test
  void swappedSlotsAreSaidAsThat() throws IOException {
    write(
        "program-readings.csv",
        READINGS,
        "EQ-1,2026-11-01,3," + L_YELLOW,
        "EQ-1,2026-11-01,3," + L_BLUE,
        "EQ-1,2026-11-01,4," + R_YELLOW,
        "EQ-1,2026-11-01,4," + R_BLUE);
    assertThat(said("slots"))
        .containsExactly(
            "slots 3 and 4 are swapped: each holds what is approved for the other: asset:EQ-1");
  }

  @Test
  void fieldsThatDifferAreNamed() throws IOException {
    write(
        "program-readings.csv",
        READINGS,
        "EQ-1,2026-11-01,3," + R_YELLOW.replace("60 W", "65 W"),
        "EQ-1,2026-11-01,3," + R_BLUE);
    assertThat(said("slot 3")).containsExactly("slot 3 does not hold what is approved: asset:EQ-1");
    assertThat(said("limit"))
        .containsExactly("  asset:EQ-1: yellow pedal, limit: approved 60 W, read 65 W");
  }

  @Test
  void eventThatEndsAReadingIsNamed() throws IOException {
    write(
        "program-readings.csv",
        READINGS,
        "EQ-1,2026-02-01,3," + R_YELLOW,
        "EQ-1,2026-02-01,3," + R_BLUE);
    write(
        "service-events.csv",
        "asset,date,event,software-after,note\n",
        "EQ-1,2026-02-24,software update,2.3,\n");
    assertThat(said("slot 3"))
        .containsExactly(
            "slot 3 was not read back since the software update of 2026-02-24: asset:EQ-1");
  }

  @Test
  void measurementIsToldWithWhatWasExpectedAndHow() throws IOException {
    write(
        "output-checks.csv",
        "asset,date,mode,level,limit,load,watts,method,initials\n",
        "EQ-1,2026-10-01,pulsed-cut,2,60 W,500 ohm,30 W,Analyser,AB\n");
    assertThat(said("pulsed-cut"))
        .containsExactly("output of pulsed-cut was measured out of tolerance: asset:EQ-1");
    assertThat(said("too low"))
        .containsExactly(
            "  asset:EQ-1: too low: 30 W at 500 ohm on 2026-10-01 (Analyser), expected from 48 W"
                + " to 72 W");
  }

  /** The base unit's bipolar soft mode, at its dial of 20 W, is held far below it at 500 ohm. */
  @Test
  void softModeFarBelowItsDialIsRight() throws IOException {
    write(
        "output-checks.csv",
        "asset,date,mode,level,limit,load,watts,method,initials\n",
        "EQ-1,2026-10-01,bipolar,low,20 W,500 ohm,14 W,Analyser,AB\n");
    assertThat(said("bipolar")).isEmpty();
  }
}
