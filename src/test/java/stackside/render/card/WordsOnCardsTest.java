package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Analysis;
import stackside.derive.edition.DamagedRegister;
import stackside.derive.edition.Editions;
import stackside.derive.edition.Register;
import stackside.derive.signed.Approvals;
import stackside.model.Messages;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.Words;
import stackside.render.plan.CardPlanner;

/** What of the program's words reaches a card is known exactly, for just that is signed. */
final class WordsOnCardsTest {
  private static final Pattern KEY = Pattern.compile("«([^»]+)»");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static final List<Publication> PUBLICATIONS =
      Stream.of(Units.demonstration(), Units.read("cards"), Units.read("cholla"))
          .flatMap(
              unit ->
                  Stream.of(Marking.values())
                      .map(
                          marking ->
                              new Publication(
                                  Analysis.of(unit),
                                  List.of(),
                                  List.of(),
                                  marking,
                                  issued(),
                                  Approvals.none(),
                                  DAY)))
          .toList();

  /** The cards of the demonstration as its last issue left them. */
  private static Editions issued() {
    try {
      SortedMap<String, Editions.Edition> editions = new TreeMap<>();
      Register.read(Files.readString(Path.of("site", Register.FILE)))
          .cards()
          .forEach(
              (name, card) ->
                  editions.put(
                      name,
                      new Editions.Edition(
                          String.valueOf(card.edition()),
                          card.since(),
                          card.review(),
                          card.approval())));
      return new Editions(editions, Register.none());
    } catch (IOException | DamagedRegister e) {
      throw new AssertionError(e);
    }
  }

  private static Publication saying(Publication publication, Map<String, String> others) {
    String file =
        others.entrySet().stream()
            .map(entry -> entry.getKey() + " = " + entry.getValue())
            .collect(Collectors.joining("\n"));
    return publication.saying(publication.words().with(Words.parse(file)));
  }

  /** The program's words, each with its key before it. */
  private static Map<String, String> marked() {
    Map<String, String> marked = new TreeMap<>();
    Messages.english().forEach((key, words) -> marked.put(key, "«" + key + "»" + words));
    return marked;
  }

  /** The keys of all words that stand on a card or are read aloud from it. */
  private static Set<String> onCards() {
    Set<String> keys = new TreeSet<>();
    for (Publication publication : PUBLICATIONS) {
      CardPlanner.plans(saying(publication, marked()))
          .forEach(
              plan ->
                  KEY.matcher(plan.toString()).results().forEach(key -> keys.add(key.group(1))));
    }
    return keys;
  }

  @Test
  void everyWordOfACard_isAmongThoseThatAreSigned() {
    assertThat(onCards()).hasSizeGreaterThan(50).allMatch(Messages::reachCards);
  }

  /** No more is signed than what a card says. */
  @Test
  void everyGroupOfSignedWords_isOnACard() {
    Set<String> groups =
        Messages.english().keySet().stream()
            .filter(Messages::reachCards)
            .map(WordsOnCardsTest::group)
            .collect(Collectors.toCollection(TreeSet::new));
    onCards().forEach(key -> groups.remove(group(key)));
    assertThat(groups).isEmpty();
  }

  private static String group(String key) {
    return key.startsWith("choice.")
        ? key.replaceFirst("[.][^.]*$", "")
        : key.replaceFirst("[.].*", "");
  }

  @Test
  void wordsThatAreNotSigned_changeNoByteOfACard() {
    Map<String, String> others = marked();
    others.keySet().removeIf(Messages::reachCards);
    assertThat(others).hasSizeGreaterThan(500);
    Publication publication = PUBLICATIONS.get(0);
    assertThat(printed(saying(publication, others))).isEqualTo(printed(publication));
  }

  private static Map<String, OutputFile> printed(Publication publication) {
    return CardRenderer.render(publication, CardPlanner.plans(publication)).files().stream()
        .collect(Collectors.toMap(OutputFile::path, file -> file, (a, b) -> a, TreeMap::new));
  }
}
