package stackside.render.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.Lesion;
import stackside.model.Site;
import stackside.model.SiteChoice;
import stackside.model.Thing;
import stackside.model.Tract;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.CardPlan;

/**
 * One of several cards that could replace a card too high for its page, as an author would write
 * it, with the rows that would move to it. Splits first by tract, then by lesion, then by site.
 *
 * @param sites ids of sites or groups
 * @param lesions ids; empty if the card holds all of them
 */
record CardSplit(String name, List<String> sites, List<String> lesions, List<String> rows) {

  private static final List<String> ORDER =
      List.of("first", "second", "third", "fourth", "fifth", "sixth");

  CardSplit {
    sites = List.copyOf(sites);
    lesions = List.copyOf(lesions);
    rows = List.copyOf(rows);
  }

  /** A line for the room's file, then the rows that the card would take. */
  String words() {
    String only = lesions.isEmpty() ? "" : ", lesions: [" + String.join(", ", lesions) + "]";
    return "{name: %s, sites: [%s]%s} takes %s"
        .formatted(
            name,
            String.join(", ", sites),
            only,
            rows.stream().map(row -> "'" + row + "'").collect(Collectors.joining(", ")));
  }

  /**
   * The cards that these rows could be divided between; a single card if they cannot be divided.
   */
  static List<CardSplit> of(
      CardPlan plan, List<AnswerRow> rows, List<Double> heights, double room) {
    List<CardSplit> tracts = byTract(plan, rows);
    if (tracts.size() > 1) {
      return tracts;
    }
    List<Lesion> lesions = all(rows, scope -> scope.lesions().stream());
    if (lesions.size() > 1) {
      List<List<Lesion>> parts = filled(lesions, AnswerRow.Scope::lesions, rows, heights, room);
      return named(
          plan,
          parts,
          (name, part) ->
              new CardSplit(
                  name,
                  ids(choices(plan)),
                  ids(part),
                  titles(rows, scope -> meets(scope.lesions(), part))));
    }
    List<Site> sites = all(rows, scope -> scope.sites().stream());
    return named(
        plan,
        filled(sites, AnswerRow.Scope::sites, rows, heights, room),
        (name, part) ->
            new CardSplit(
                name,
                ids(part),
                plan.part().map(here -> ids(values(here.lesions()))).orElse(List.of()),
                titles(rows, scope -> meets(scope.sites(), part))));
  }

  private static List<CardSplit> byTract(CardPlan plan, List<AnswerRow> rows) {
    List<Site> sites = all(rows, scope -> scope.sites().stream());
    List<Tract> tracts = sites.stream().map(site -> site.tract().value()).distinct().toList();
    String before = plan.part().map(part -> part.name().value() + " ").orElse("");
    return tracts.stream()
        .map(
            tract ->
                new CardSplit(
                    before + tract.word(),
                    ids(within(tract, choices(plan))),
                    plan.part().map(here -> ids(values(here.lesions()))).orElse(List.of()),
                    titles(
                        rows,
                        scope -> scope.sites().stream().anyMatch(s -> s.tract().value() == tract))))
        .toList();
  }

  /** Keeps choices that lie within the tract whole; of any other, takes the single sites. */
  private static List<SiteChoice> within(Tract tract, List<SiteChoice> choices) {
    Set<SiteChoice> here = new LinkedHashSet<>();
    for (SiteChoice choice : choices) {
      List<Site> sites =
          choice.sites().stream().filter(site -> site.tract().value() == tract).toList();
      if (sites.size() == choice.sites().size()) {
        here.add(choice);
      } else {
        here.addAll(sites);
      }
    }
    return List.copyOf(here);
  }

  /** The sites of the card, as its author wrote them. */
  private static List<SiteChoice> choices(CardPlan plan) {
    return plan.part()
        .map(part -> values(part.sites()))
        .orElseGet(
            () ->
                plan.room().offers().stream()
                    .flatMap(offer -> values(offer.sites()).stream())
                    .distinct()
                    .toList());
  }

  /** Divides things in order between cards, as many on each as the height of its rows allows. */
  private static <T> List<List<T>> filled(
      List<T> things,
      Function<AnswerRow.Scope, List<T>> of,
      List<AnswerRow> rows,
      List<Double> heights,
      double room) {
    List<List<T>> cards = new ArrayList<>();
    List<T> card = new ArrayList<>();
    for (T thing : things) {
      card.add(thing);
      if (card.size() > 1 && height(card, of, rows, heights) > room) {
        card.remove(card.size() - 1);
        cards.add(List.copyOf(card));
        card = new ArrayList<>(List.of(thing));
      }
    }
    cards.add(List.copyOf(card));
    return cards;
  }

  private static <T> double height(
      List<T> things,
      Function<AnswerRow.Scope, List<T>> of,
      List<AnswerRow> rows,
      List<Double> heights) {
    double sum = 0;
    for (int i = 0; i < rows.size(); i++) {
      boolean here =
          rows.get(i).scopes().stream().anyMatch(scope -> meets(of.apply(scope), things));
      sum += here ? heights.get(i) : 0;
    }
    return sum;
  }

  /** Makes one card per part: the old name, followed by an ordinal. */
  private static <T> List<CardSplit> named(CardPlan plan, List<List<T>> parts, Maker<T> maker) {
    String before = plan.part().map(part -> part.name().value() + " ").orElse("");
    List<CardSplit> cards = new ArrayList<>();
    for (List<T> part : parts) {
      int number = cards.size();
      String which =
          number < ORDER.size() ? ORDER.get(number) : String.format(Locale.ROOT, "%d", number + 1);
      cards.add(maker.card(before + which, part));
    }
    return cards;
  }

  private interface Maker<T> {
    CardSplit card(String name, List<T> part);
  }

  private static <T> List<T> all(List<AnswerRow> rows, Function<AnswerRow.Scope, Stream<T>> of) {
    return rows.stream().flatMap(row -> row.scopes().stream()).flatMap(of).distinct().toList();
  }

  private static <T> boolean meets(List<T> some, List<T> others) {
    return some.stream().anyMatch(others::contains);
  }

  /** Titles the rows by the first of their scopes that fits. */
  private static List<String> titles(List<AnswerRow> rows, Predicate<AnswerRow.Scope> here) {
    return rows.stream()
        .flatMap(row -> row.scopes().stream().filter(here).limit(1))
        .map(scope -> scope.what().words() + ", " + scope.where().words())
        .distinct()
        .toList();
  }

  private static <T> List<T> values(List<Fact<T>> facts) {
    return facts.stream().map(Fact::value).toList();
  }

  private static List<String> ids(List<? extends Thing> things) {
    return things.stream().map(thing -> thing.id().slug()).toList();
  }
}
