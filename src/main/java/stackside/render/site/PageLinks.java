package stackside.render.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.handbook.Claim;
import stackside.derive.handbook.Grounds;
import stackside.render.Numbers;

/**
 * The links that a handbook page gets by itself: each note leads to its claim, and each word of the
 * glossary to its meaning where the page uses it first.
 */
final class PageLinks {
  private final List<Word> words;
  private final Set<String> linked = new HashSet<>();
  private final Set<Integer> claims;
  private final Set<Integer> recalled;
  private final PageContext here;

  /** A word of the glossary, or the unit's own for it. */
  private record Word(String term, Pattern pattern) {}

  /**
   * The links of one page.
   *
   * @param recalled whether a claim rests on a publication that nobody has read
   */
  PageLinks(PageContext here, List<Claim> claims, Predicate<Claim> recalled) {
    this.here = here;
    this.claims = claims.stream().map(Claim::number).collect(Collectors.toSet());
    this.recalled = claims.stream().filter(recalled).map(Claim::number).collect(Collectors.toSet());
    this.words =
        GlossaryPage.terms(here.words()).stream()
            .flatMap(
                term ->
                    Stream.of(GlossaryPage.usual(term, here), GlossaryPage.own(term, here))
                        .distinct()
                        .map(word -> new Word(term, pattern(word))))
            .toList();
  }

  private static Pattern pattern(String word) {
    return Pattern.compile(
        "(?<![\\p{L}\\d-])" + Pattern.quote(word) + "s?(?![\\p{L}\\d-])",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  static String anchor(int note) {
    return "note-" + note;
  }

  /** Plain words of a running text as HTML. */
  String html(String text) {
    StringBuilder out = new StringBuilder();
    Matcher notes = Grounds.NOTE.matcher(text);
    int from = 0;
    while (notes.find()) {
      words(text.substring(from, notes.start()).stripTrailing(), out);
      out.append("<span class=\"notes\">\u00a0").append(notes(notes.group(1))).append("</span>");
      from = notes.end();
    }
    words(text.substring(from), out);
    return out.toString();
  }

  private String notes(String numbers) {
    return Stream.of(numbers.split(", "))
        .map(Integer::valueOf)
        .map(number -> claims.contains(number) ? note(number) : "[" + number + "]")
        .collect(Collectors.joining(" "));
  }

  private String note(int number) {
    String spoken =
        here.say(
            recalled.contains(number) ? "handbook.note.recalled" : "handbook.note.read", number);
    String shown = recalled.contains(number) ? here.say("handbook.note.mark", number) : "" + number;
    return "<a class=\"note\" href=\"#%s\" aria-label=\"%s\">%s</a>"
        .formatted(anchor(number), ProseHtml.escaped(spoken), ProseHtml.escaped(shown));
  }

  private void words(String text, StringBuilder out) {
    String rest = text;
    for (Optional<Found> next = first(rest); next.isPresent(); next = first(rest)) {
      Found found = next.orElseThrow();
      linked.add(found.term());
      out.append(plain(rest.substring(0, found.start())))
          .append("<a class=\"term\" href=\"")
          .append(ProseHtml.escaped(here.to("glossary.html") + "#term-" + found.term()))
          .append("\">")
          .append(plain(rest.substring(found.start(), found.end())))
          .append("</a>");
      rest = rest.substring(found.end());
    }
    out.append(plain(rest));
  }

  /** Where a word stands in a text. */
  private record Found(String term, int start, int end) {}

  /** The first word that is not linked yet; of two at one place the longer. */
  private Optional<Found> first(String text) {
    List<Found> all = new ArrayList<>();
    for (Word word : words) {
      Matcher matcher = word.pattern().matcher(text);
      if (!linked.contains(word.term()) && matcher.find()) {
        all.add(new Found(word.term(), matcher.start(), matcher.end()));
      }
    }
    return all.stream()
        .min(
            Comparator.comparingInt(Found::start)
                .thenComparing(Comparator.comparingInt(Found::end).reversed()));
  }

  private static String plain(String text) {
    return ProseHtml.escaped(Numbers.bind(text));
  }
}
