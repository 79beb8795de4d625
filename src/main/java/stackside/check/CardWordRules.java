package stackside.check;

import static java.util.Map.entry;
import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.Messages;
import stackside.model.PedalAction;
import stackside.model.PedalColour;

/** The unit's own words for what every card says. */
final class CardWordRules {
  private static final Pattern PUT_IN = Pattern.compile("\\{\\d+}");
  private static final Pattern DIGIT = Pattern.compile("\\p{Nd}");
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}{}]+");

  /** What may be said in other words, as long as these are kept. */
  private static final Map<String, String> IN_ENGLISH =
      Map.ofEntries(
          entry("card.asset-differs", "not use"),
          entry("card.cold", "no current"),
          entry("card.destroy", "destroy"),
          entry("card.do-not-press", "not press"),
          entry("card.mark-demonstration", "not for patients"),
          entry("card.mark-draft", "draft"),
          entry("card.never", "never"),
          entry("card.no-answer-ask", "ask"),
          entry("card.not-approved", "not approved"),
          entry("card.not-mended", "stop"),
          entry("card.not-on-this", "not"),
          entry("card.press-only-blue", "only"),
          entry("card.press-only-yellow", "only"),
          entry("card.several-ask", "not use"),
          entry("card.tone-alarm", "alarm"),
          entry("card.tone-none", "no tone"),
          entry("card.unsigned", "not approved"),
          entry("choice.pedal-action.coagulation", "coag"),
          entry("choice.pedal-action.cut", "cut"),
          entry("choice.pedal-colour.blue", "blue"),
          entry("choice.pedal-colour.yellow", "yellow"),
          entry("heard.alarm", "alarm"),
          entry("heard.none", "no tone"),
          entry("panel.here", "not"),
          entry("panel.keep-empty", "empty"),
          entry("panel.name-unused", "not used"),
          entry("panel.unused", "not used"),
          entry("panel.unused-sentence", "not used"));

  private final Map<String, Fact<String>> own;
  private final Map<String, String> usual;
  private final boolean english;
  private final List<Finding> found = new ArrayList<>();

  private CardWordRules(Map<String, Fact<String>> own, String language) {
    this.own = new TreeMap<>(own);
    this.own.keySet().removeIf(key -> !Messages.reachCards(key));
    this.usual = new TreeMap<>(Messages.english());
    Messages.in(language).ifPresent(usual::putAll);
    this.english = language.matches("en(-.*)?");
  }

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "card-word-misleads",
            "the unit's own words make a card say something else than it must",
            CardWordRules::cardWordMisleads));
  }

  private static List<Finding> cardWordMisleads(CheckedUnit checked) {
    Map<String, Fact<String>> own = checked.unit().ownWords();
    if (own.isEmpty()) {
      return List.of();
    }
    CardWordRules rules = new CardWordRules(own, checked.unit().details().language().value());
    rules.own.forEach(rules::judge);
    rules.pedals();
    return rules.found;
  }

  private void judge(String key, Fact<String> words) {
    String said = "'" + words.value() + "' on a card ";
    String usually = "the program says: " + usual(key);
    if (DIGIT.matcher(PUT_IN.matcher(words.value()).replaceAll("")).find()) {
      find(words, said + "holds a number", "leave numbers to the content");
    }
    String lost = english ? IN_ENGLISH.getOrDefault(key, "") : "";
    if (!plain(words.value()).contains(lost)) {
      find(words, said + "no longer says '" + lost + "'", usually);
    }
    takenFrom(key, words)
        .ifPresent(other -> find(words, said + "is what '" + other + "' says", usually));
  }

  private void find(Fact<String> words, String message, String help) {
    found.add(Finding.at(words.at(), message).help(help));
  }

  private String usual(String key) {
    return usual.getOrDefault(key, "");
  }

  private String said(String key) {
    Fact<String> mine = own.get(key);
    return mine == null ? usual(key) : mine.value();
  }

  /**
   * Two things that the program keeps apart must have different words, and no two may swap their
   * words.
   */
  private Optional<String> takenFrom(String key, Fact<String> words) {
    String mine = plain(words.value());
    return usual.keySet().stream()
        .filter(Messages::reachCards)
        .filter(other -> !plain(usual(other)).equals(plain(usual(key))))
        .filter(
            other -> Stream.of(usual(other), said(other)).map(this::plain).anyMatch(mine::equals))
        .findFirst();
  }

  /** In small letters, without the signs between the words. */
  private String plain(String words) {
    return BETWEEN.matcher(words).replaceAll(" ").strip().toLowerCase(Locale.ROOT);
  }

  /** Each head of a column names the colour and the job of its own pedal, and of no other. */
  private void pedals() {
    names("card.column-yellow", PedalColour.YELLOW, Optional.of(PedalAction.CUT));
    names("card.column-blue", PedalColour.BLUE, Optional.of(PedalAction.COAGULATION));
    names("card.press-only-yellow", PedalColour.YELLOW, Optional.empty());
    names("card.press-only-blue", PedalColour.BLUE, Optional.empty());
  }

  private void names(String key, PedalColour colour, Optional<PedalAction> action) {
    for (PedalColour each : PedalColour.values()) {
      names(key, "choice.pedal-colour." + each.word(), each == colour);
    }
    action.ifPresent(
        job -> {
          for (PedalAction each : PedalAction.values()) {
            names(key, "choice.pedal-action." + each.word(), each == job);
          }
        });
  }

  private void names(String key, String part, boolean wanted) {
    Optional<Fact<String>> changed =
        Optional.ofNullable(own.get(key)).or(() -> Optional.ofNullable(own.get(part)));
    String head = plain(said(key));
    String named = plain(said(part));
    boolean there = wanted ? head.contains(named) : (" " + head + " ").contains(" " + named + " ");
    if (there != wanted) {
      String message =
          "'" + said(key) + "' on a card " + (wanted ? "does not name" : "names") + " '";
      changed.ifPresent(
          words -> find(words, message + said(part) + "'", "the program says: " + usual(key)));
    }
  }
}
