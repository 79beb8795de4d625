package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.Units;
import stackside.render.Ink;

/**
 * The palette of pages and drawings. Words reach 7:1 on every background that they appear on, and
 * meaningful lines reach 3:1 (WCAG 2.2, success criteria 1.4.6 and 1.4.11, from memory).
 */
final class PaletteTest {
  private static final Pattern VARIABLE = Pattern.compile("--([a-z-]+): (#[0-9a-f]{3,6})");

  /** A scheme: its name and its colours. */
  record Scheme(String name, Map<String, String> colours) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Scheme> schemes() {
    String css = new Templates(Units.demonstration()).text("assets/stackside.css");
    Map<String, String> light = variables(css, css.indexOf(":root {"));
    Map<String, String> dark = new HashMap<>(light);
    dark.putAll(variables(css, css.indexOf(":root {", css.indexOf("prefers-color-scheme: dark"))));
    Map<String, String> print = new HashMap<>(light);
    print.putAll(variables(css, css.indexOf(":root {", css.indexOf("@media print"))));
    return Stream.of(
        new Scheme("light", light), new Scheme("dark", dark), new Scheme("print", print));
  }

  private static Map<String, String> variables(String css, int from) {
    Map<String, String> found = new HashMap<>();
    Matcher variable = VARIABLE.matcher(css.substring(from, css.indexOf('}', from)));
    while (variable.find()) {
      found.put(variable.group(1), variable.group(2));
    }
    assertThat(found).containsKeys("ink", "paper", "grey");
    return found;
  }

  @ParameterizedTest
  @MethodSource("schemes")
  void wordsReachSevenToOneOnPaper(Scheme scheme) {
    String paper = scheme.colours().get("paper");
    for (String words : new String[] {"ink", "grey", "link"}) {
      assertThat(ratio(scheme.colours().get(words), paper)).as(words).isGreaterThanOrEqualTo(7);
    }
    assertThat(ratio(scheme.colours().get("ink"), scheme.colours().get("shade")))
        .as("words on a shaded part of a plot")
        .isGreaterThanOrEqualTo(7);
  }

  @ParameterizedTest
  @MethodSource("schemes")
  void rulesThatPartRowsReachThreeToOne(Scheme scheme) {
    assertThat(ratio(scheme.colours().get("rule"), scheme.colours().get("paper")))
        .isGreaterThanOrEqualTo(3);
  }

  @Test
  void drawingsUseThePaletteOfTheLightPage() {
    Map<String, String> light = schemes().findFirst().orElseThrow().colours();
    assertThat(Ink.INK.hex()).isEqualTo(light.get("ink"));
    assertThat(Ink.GREY.hex()).isEqualTo(light.get("grey"));
    assertThat(Ink.SHADE.hex()).isEqualTo(light.get("shade"));
    assertThat(Ink.YELLOW.hex()).isEqualTo(light.get("yellow"));
    assertThat(Ink.BLUE.hex()).isEqualTo(light.get("blue"));
  }

  /** Black on white is 21:1 by definition; the other is a well-known pair (from memory). */
  @ParameterizedTest
  @CsvSource({"#000000, #ffffff, 21.00", "#777777, #ffffff, 4.48", "#fff, #fff, 1.00"})
  void theRatioIsThatOfTheStandard(String one, String other, double expected) {
    assertThat(ratio(one, other)).isCloseTo(expected, org.assertj.core.data.Offset.offset(0.005));
  }

  private static double ratio(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String hex) {
    String six = hex.length() == 4 ? hex.replaceAll("([0-9a-f])", "$1$1") : hex;
    return 0.2126 * linear(six, 1) + 0.7152 * linear(six, 3) + 0.0722 * linear(six, 5);
  }

  private static double linear(String hex, int at) {
    double share = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
