package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.Words;
import stackside.render.plan.CardPlanner;

/**
 * A second language is one file. The demonstration is rendered with a message file in which every
 * word is marked. Any word on a page without a mark must then come from the unit's content.
 */
final class SecondLanguageTest {
  /** These pages address the author of the content, in the language of the rules. */
  private static final Pattern FOR_AUTHORS = Pattern.compile("(rules/.*|rules|problems)\\.html");

  private static final Pattern PUT_IN = Pattern.compile("(?=\\{\\d\\})|(?<=\\{\\d\\})");
  private static final Pattern MARKED = Pattern.compile("«[^»]*»");
  private static final Pattern FINGERPRINT = Pattern.compile("\\b[0-9a-z]{4}(-[0-9a-z]{4}){4}\\b");
  private static final Pattern WORD = Pattern.compile("[A-Za-z]{3}");

  private static Words marked() {
    String file =
        Words.in("en-GB").all().entrySet().stream()
            .map(entry -> entry.getKey() + " = " + marked(entry.getValue()))
            .collect(Collectors.joining("\n"));
    return Words.parse(file);
  }

  /** Puts marks around each word, but leaves placeholders unchanged. */
  private static String marked(String message) {
    return PUT_IN
        .splitAsStream(message)
        .map(
            part ->
                part.matches("\\{\\d\\}") ? part : part.replaceAll("[\\p{L}'’.,;:()-]+", "«$0»"))
        .collect(Collectors.joining());
  }

  private static List<OutputFile> pages() {
    Publication publication =
        DemonstrationSite.publication(Units.demonstration(), Marking.DRAFT).saying(marked());
    return SiteRenderer.render(publication, CardPlanner.plans(publication)).stream()
        .filter(file -> file.path().endsWith(".html"))
        .filter(file -> !FOR_AUTHORS.matcher(file.path()).matches())
        .toList();
  }

  @Test
  void everyWordOfAPageComesFromTheMessageFileOrTheContent() throws IOException {
    String content = content();
    Set<String> strange = new TreeSet<>();
    List<OutputFile> pages = pages();
    assertThat(pages).hasSizeGreaterThan(200);
    for (OutputFile page : pages) {
      for (String phrase : unmarked(new String(page.bytes(), StandardCharsets.UTF_8))) {
        if (!standsIn(content, plain(phrase))) {
          strange.add(phrase.strip() + "   (" + page.path().replaceAll("/.*", "") + ")");
        }
      }
    }
    assertThat(strange).isEmpty();
  }

  /** Whether the content contains it, in one place or as two neighbouring names. */
  private static boolean standsIn(String content, String phrase) {
    boolean whole = content.contains(" " + phrase + " ");
    for (int space = phrase.indexOf(' '); !whole && space > 0; ) {
      whole =
          content.contains(" " + phrase.substring(0, space) + " ")
              && content.contains(phrase.substring(space) + " ");
      space = phrase.indexOf(' ', space + 1);
    }
    return whole;
  }

  private static List<String> unmarked(String html) {
    List<String> phrases = new ArrayList<>();
    for (String text : texts(Jsoup.parse(html))) {
      Stream.of(unsaid(text).split("[|,;:.()/“”·]+"))
          .filter(phrase -> WORD.matcher(phrase).find())
          .forEach(phrases::add);
    }
    return phrases;
  }

  private static String unsaid(String text) {
    return FINGERPRINT.matcher(MARKED.matcher(text).replaceAll(" | ")).replaceAll(" | ");
  }

  /** The texts of a page that are seen or read aloud. */
  private static List<String> texts(Document page) {
    List<String> texts = new ArrayList<>();
    for (Element element : page.select(":not(script):not(style)")) {
      for (TextNode node : element.textNodes()) {
        if (!node.text().startsWith("https:")) {
          texts.add(node.text());
        }
      }
      texts.add(element.attr("aria-label"));
    }
    return texts;
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ").strip();
  }

  private static String content() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("content"));
        Stream<Path> chapters = Files.list(Path.of("src/main/resources/stackside/chapters"))) {
      StringBuilder all = new StringBuilder();
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        all.append(Files.readString(file)).append('\n');
      }
      for (Path file : chapters.sorted().toList()) {
        all.append(Files.readString(file)).append('\n');
      }
      return " " + plain(all.toString()) + " ";
    }
  }
}
