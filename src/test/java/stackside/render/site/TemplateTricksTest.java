package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stackside.derive.Edited;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.Publication;

/**
 * What a template of a unit's own may try: none runs a program or reads a file, and each is told.
 */
final class TemplateTricksTest {

  /** What the template holds, the line that is named, and words of the sentence. */
  static Stream<Arguments> tricks() {
    return Stream.of(
        // classes
        arguments("${\"freemarker.template.utility.Execute\"?new()(\"id\")}", 1, "not allowed"),
        arguments(
            "ok\n<#assign x=\"freemarker.template.utility.ObjectConstructor\"?new()>",
            2,
            "not allowed"),
        arguments(
            "<#assign x=\"freemarker.template.utility.JythonRuntime\"?new()>", 1, "not allowed"),
        arguments("${\"java.io.File\"?new(\"/etc/passwd\")}", 1, "not allowed"),
        arguments("<#assign n=\"?new()\"><#assign x=(r'\"java.lang.Thread\"' + n)?eval>", 1, ""),
        arguments("${frame?api.class.name}", 1, "?api"),
        arguments("${frame.class.name}", 1, "'frame.class'"),
        arguments("${frame.getClass().name}", 1, "'frame.getClass'"),
        arguments("${frame.words.class.classLoader}", 1, "'frame.words.class'"),
        arguments("${frame.words.getClass().getResource('/')}", 1, "'frame.words.getClass'"),
        arguments("${statics['java.lang.System'].exit(0)}", 1, "'statics'"),
        // files
        arguments("<#include \"/etc/passwd\">", 1, "there is no template"),
        arguments("<#include \"../../../../etc/passwd\">", 1, ""),
        arguments("\n\n<#include \"file:///etc/passwd\">", 3, ""),
        arguments("<#include \"..\\\\..\\\\etc\\\\passwd\">", 1, ""),
        arguments("<#include \"../stackside/json.md\">", 1, ""),
        arguments("<#import \"/proc/self/environ\" as env>", 1, "there is no template"),
        arguments("<#include \"*/passwd\">", 1, "there is no template"),
        arguments("${.get_optional_template('../unit.yaml').exists?c}", 1, ""),
        // names and calls
        arguments("<p>\n${frame.titel}", 2, "there is nothing by the name 'frame.titel'"),
        arguments("<@nothing/>", 1, "'nothing'"),
        arguments("${frame.menu}", 1, "string"),
        arguments("${frame.menu[999].text}", 1, ""),
        arguments("${frame.words.say(\"no.such.key\")}", 1, ""),
        arguments("${frame.words.say(1, 2, 3)}", 1, ""),
        arguments("<#import \"layout.ftlh\" as layout>\n<@layout.page frame=frame/>", 2, "kind"),
        arguments("${1/0}", 1, ""),
        arguments("${'x'?number}", 1, "number"),
        arguments("<#stop \"enough\">", 1, "enough"),
        arguments("${'<#if'?interpret}", 1, ""),
        arguments("${'1 +'?eval}", 1, ""),
        arguments("<#setting number_format='0;;;0;'>${1.5}", 1, ""),
        arguments("${frame.title?date}", 1, ""),
        arguments("<#macro m><#return 1></#macro><@m/>", 1, "cannot be read as a template"),
        // form
        arguments("<#if frame??>", 1, "cannot be read as a template"),
        arguments("\n<#foo>", 2, "cannot be read as a template"),
        arguments("<#ftl wrong=1>", 1, "cannot be read as a template"),
        arguments("</#list>", 1, "cannot be read as a template"),
        arguments("${" + ("(".repeat(1_000) + "\n").repeat(30) + "}", 1, "nested too deep"));
  }

  /** What would run until it is stopped; each takes some seconds. */
  static Stream<Arguments> tricksWithoutEnd() {
    return Stream.of(
        arguments("\n<#list 1.. as x></#list>", 2, "does not come to an end"),
        arguments("<#list 1.. as x>a</#list>", 1, "does not come to an end"),
        arguments("<#assign x><#list 1.. as x>a</#list></#assign>", 1, "does not come to an end"),
        arguments(
            "<#list 1..9999 as x><#list 1..9999 as y></#list></#list>",
            1,
            "does not come to an end"),
        arguments("<#list 1.. as x><#attempt>${y}<#recover></#attempt></#list>", 1, "end"),
        arguments("\n<#macro m>\n<@m/></#macro><@m/>", 2, "calls itself without end"),
        arguments("<#function f><#return f()></#function>\n${f()}", 1, "calls itself"),
        arguments("<#function f><#return f() + f()></#function>\n${f()}", 1, "calls itself"),
        arguments("a<#include \"page.ftlh\">", 1, "calls itself without end"));
  }

  private static Unit unit(String name, String text) {
    String lines = text.lines().map(line -> "+" + line + "\n").collect(Collectors.joining());
    return Edited.base("=== templates/" + name + "\n" + lines);
  }

  private static String filled(Unit unit) {
    Publication publication = DemonstrationSite.publication(unit, Marking.DRAFT);
    Page page =
        SiteRenderer.pages(new Website(publication, List.of()))
            .filter(each -> each.template().equals("page.ftlh"))
            .findFirst()
            .orElseThrow();
    return new String(new Templates(unit).fill(page).bytes(), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @MethodSource("tricks")
  void aTrick_isOneSentenceWithItsPlace(String text, int line, String words) {
    isOneSentenceWithItsPlace(text, line, words);
  }

  @ParameterizedTest
  @MethodSource("tricksWithoutEnd")
  @Tag("thorough")
  void aTrickWithoutEnd_isOneSentenceWithItsPlace(String text, int line, String words) {
    isOneSentenceWithItsPlace(text, line, words);
  }

  /** One of those in the normal run. */
  @Test
  void aListWithoutEnd_isOneSentenceWithItsPlace() {
    isOneSentenceWithItsPlace("\n<#list 1.. as x></#list>", 2, "does not come to an end");
  }

  private static void isOneSentenceWithItsPlace(String text, int line, String words) {
    Unit unit = unit("page.ftlh", text);
    assertThatThrownBy(() -> filled(unit))
        .isInstanceOf(BrokenTemplate.class)
        .hasMessageStartingWith("templates/page.ftlh:" + line + ": ")
        .hasMessageContaining(words)
        .hasMessageEndingWith("; correct it, or remove it to take the program's own")
        .satisfies(
            told ->
                assertThat(told.getMessage())
                    .hasLineCount(1)
                    .hasSizeLessThan(500)
                    .doesNotContain("\n", "freemarker.core", "root:"));
  }

  /**
   * Nothing is asked where a template includes itself and prints nothing; its line is not known.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {"<#include \"page.ftlh\">", "<#assign s='<@s?interpret/>'><@s?interpret/>"})
  void anInclusionOfItselfInSilence_isToldWithItsFile(String text) {
    Unit unit = unit("page.ftlh", text);
    assertThatThrownBy(() -> filled(unit))
        .isInstanceOf(BrokenTemplate.class)
        .hasMessageStartingWith("templates/page.ftlh")
        .hasMessageContaining("calls itself without end");
  }

  @Test
  @Tag("thorough")
  void memoryWithoutEnd_isTold() {
    Unit unit = unit("page.ftlh", "<#assign s='ab'>\n<#list 1.. as x><#assign s=s+s+s+s></#list>");
    assertThatThrownBy(() -> filled(unit))
        .isInstanceOf(BrokenTemplate.class)
        .hasMessageStartingWith("templates/page.ftlh")
        // Which limit is met first depends on how fast the machine is.
        .hasMessageMatching("(?s).*(more memory|does not come to an end).*");
  }

  /** Java cannot be stopped there; it is left behind. */
  @Test
  @Tag("thorough")
  void aSearchWithoutEnd_isLeftBehind() {
    Unit unit = unit("page.ftlh", "${('a'?right_pad(60, 'a') + '!')?matches('(.*a){25}')?c}");
    assertThatThrownBy(() -> filled(unit))
        .isInstanceOf(BrokenTemplate.class)
        .hasMessageStartingWith("templates/page.ftlh:1: ")
        .hasMessageContaining("does not come to an end");
  }

  @Test
  void aTemplateThatOnlyPlaces_isFilled() {
    String text =
        """
        <#import "layout.ftlh" as layout>
        <#assign words = frame.words>
        <#include "parts.ftlh">
        <@layout.page frame=frame kind=kind>
        <p>Ours: ${frame.title?upper_case} ${words.say("menu.rooms")}</p>
        <#list 1..3 as x>${x}</#list>
        </@layout.page>""";
    assertThat(filled(unit("page.ftlh", text))).contains("<p>Ours: ").contains("123");
  }

  @Test
  void aMacroOfOurs_isReplaced() {
    assertThat(filled(unit("layout.ftlh", "<#macro page frame kind>Ours</#macro>")))
        .contains("Ours");
  }
}
