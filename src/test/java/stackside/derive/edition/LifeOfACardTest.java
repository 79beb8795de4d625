package stackside.derive.edition;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.Ledger;
import stackside.model.Kind;
import stackside.model.ThingId;

/**
 * The life of a card, breadth first over all distinct states that ten actions reach in seven steps:
 * the books decide what a model says that shares no code with them.
 */
final class LifeOfACardTest {
  private static final int DEPTH = 7;
  private static final int YEAR = 365;
  private static final int WHILE = 200;
  private static final LocalDate BEGIN = LocalDate.of(2026, 3, 1);
  private static final ThingId THING = new ThingId(Kind.PROFILE, "answer");
  private static final String CARD = "card";
  private static final String ASSET = "A-1";
  private static final List<String> ROLES = List.of("one", "two");
  private static final Fingerprint SHEET = Fingerprint.of(Json.text("sheet"));

  /** The books, and what lies in the content. */
  private record State(Books books, char value, boolean bad, int day) {

    LocalDate on() {
      return BEGIN.plusDays(day);
    }

    State with(Books after) {
      return new State(after, value, bad, day);
    }
  }

  /** One thing that can happen, to the program and to the model. */
  private record Action(String name, UnaryOperator<State> program, Consumer<LifeModel> model) {}

  private static final List<Action> ACTIONS =
      List.of(
          new Action("edit", state -> edited(state, 'B'), model -> model.edit('B')),
          new Action("edit back", state -> edited(state, 'A'), model -> model.edit('A')),
          new Action("one signs", state -> signed(state, 0), model -> model.sign(0)),
          new Action("two signs", state -> signed(state, 1), model -> model.sign(1)),
          new Action("issue", LifeOfACardTest::issued, LifeModel::issue),
          new Action("withdraw", LifeOfACardTest::withdrawn, LifeModel::withdraw),
          new Action("lift", LifeOfACardTest::lifted, LifeModel::lift),
          new Action("restore", LifeOfACardTest::restored, LifeModel::restore),
          new Action(
              "time passes",
              state -> new State(state.books(), state.value(), state.bad(), state.day() + WHILE),
              model -> model.timePasses(WHILE)),
          new Action(
              "read back",
              state -> new State(state.books(), state.value(), !state.bad(), state.day()),
              model -> model.readBack(false)));

  private static State edited(State state, char value) {
    return new State(state.books(), value, state.bad(), state.day());
  }

  private static Json.Members facts(char value) {
    return Json.members(
        Map.of(
            "thing",
            Json.text(THING.toString()),
            "facts",
            Json.members(Map.of("value", Json.text(String.valueOf(value))))));
  }

  private static Fingerprint print(char value) {
    return Fingerprint.of(facts(value));
  }

  private static State signed(State state, int role) {
    Ledger.Decision decision =
        new Ledger.Decision(
            state.on(),
            THING,
            Optional.of(print(state.value())),
            SHEET,
            ROLES.get(role),
            role == 0 ? "AB" : "CD");
    Approvals approvals = state.books().approvals().with(decision, facts(state.value()));
    return state.with(new Books(approvals, state.books().register()));
  }

  private static State issued(State state) {
    if (!state.books().problems().isEmpty()) {
      return state;
    }
    Books before = state.books().adopted();
    assertThat(before.refused(state.on(), state.on())).isEmpty();
    List<Optional<LocalDate>> given =
        ROLES.stream()
            .map(
                role ->
                    before
                        .approvals()
                        .on(state.on())
                        .about(THING, role)
                        .filter(each -> each.facts().equals(Optional.of(print(state.value()))))
                        .map(Ledger.Decision::day))
            .toList();
    boolean agreed = given.stream().allMatch(Optional::isPresent);
    Optional<LocalDate> review =
        given.stream()
            .flatMap(Optional::stream)
            .min(LocalDate::compareTo)
            .filter(day -> agreed)
            .map(day -> day.plusDays(YEAR));
    boolean overdue = review.filter(state.on()::isAfter).isPresent();
    Candidate candidate =
        new Candidate(
            CARD,
            "code",
            "Card",
            "room",
            ASSET,
            "cards/card.pdf",
            1,
            print(state.value()).text(),
            review,
            Optional.empty(),
            List.of(),
            List.of(),
            agreed && !overdue ? List.of() : List.of("not agreed"),
            List.of());
    Map<String, String> bad = state.bad() ? Map.of(ASSET, "read back wrong") : Map.of();
    Found found =
        new Found(
            List.of(candidate),
            Optional.of(Set.of(ASSET)),
            new TreeMap<>(bad),
            new TreeMap<>(),
            Optional.empty());
    Issue issue = Issue.of(before, state.on(), found);
    Map<String, String> things = new TreeMap<>(before.inForce());
    if (agreed) {
      things.put(THING.toString(), print(state.value()).text());
    }
    Json.Members manifest = Books.manifest(things);
    RegisterEntry entry = before.entry(issue, manifest, List.of());
    return state.with(before.repeats(entry) ? before : before.issued(entry, manifest));
  }

  private static State withdrawn(State state) {
    Optional<CardEntry> card = state.books().register().card(CARD).filter(CardEntry::current);
    if (card.isEmpty()) {
      return state;
    }
    boolean together = state.books().problems().isEmpty();
    Books before =
        together ? state.books().adopted() : new Books(Approvals.none(), state.books().register());
    Stop stop = new Stop(Stop.asset(ASSET), "smoke", Optional.of("one"), state.on());
    RegisterEntry entry =
        before.withdrawal(state.on(), "one", List.of(card.get().outOfUse("smoke")), stop);
    return state.with(
        together
            ? before.with(entry, "AB")
            : new Books(state.books().approvals(), before.register().with(entry)));
  }

  private static State lifted(State state) {
    String what = Stop.asset(ASSET);
    boolean allowed =
        state.books().problems().isEmpty()
            && state.books().register().stops().containsKey(what)
            && !state.bad();
    if (!allowed) {
      return state;
    }
    Books before = state.books().adopted();
    return state.with(
        before.with(before.lifting(state.on(), "two", List.of(what), "mended"), "CD"));
  }

  private static State restored(State state) {
    Register register = state.books().register();
    return register.lines().size() > 1
        ? state.with(new Books(state.books().approvals(), register.before()))
        : state;
  }

  /** What can be seen from outside, in the model's words. */
  private static String seen(State state) {
    Books books = state.books();
    Optional<CardEntry> card = books.register().card(CARD);
    String words =
        card.map(
                each ->
                    (each.fingerprint().equals(print('A').text()) ? "A " : "B ")
                        + each.edition()
                        + (each.current() ? " up" : " down"))
            .orElse("none");
    return "%s%s, %d issues, ledger %d, site %d, %s"
        .formatted(
            words,
            books.register().stops().isEmpty() ? "" : " stopped",
            books.ledger().last(Deed.ISSUE),
            books.ledger().acts().size(),
            books.register().lines().size(),
            books.problems().isEmpty() ? "together" : "apart");
  }

  /**
   * The state without what makes no difference: which seals they are, in which order was signed.
   */
  private static String key(State state) {
    Map<String, Integer> seals = new HashMap<>();
    List<String> parts = new ArrayList<>();
    for (Ledger.Act act : state.books().ledger().acts()) {
      Optional<Register.Sealed> sealed =
          Optional.ofNullable(state.books().approvals().kept().get(act.register().text()))
              .flatMap(Register::sealed);
      parts.add(
          act.deed()
              + " "
              + number(seals, Optional.of(act.register()))
              + " after "
              + sealed.map(each -> number(seals, each.before())).orElse(-1));
    }
    for (Register.Line line : state.books().register().lines()) {
      parts.add(line.entry().deed() + " " + number(seals, Optional.of(line.seal())));
    }
    for (String role : ROLES) {
      parts.add(
          state
              .books()
              .approvals()
              .on(state.on())
              .about(THING, role)
              .map(each -> each.day() + " " + each.facts())
              .orElse("none"));
    }
    parts.add(state.books().register().cards().toString());
    parts.add(state.books().inForce().toString());
    parts.add(state.books().editionsGiven().toString());
    return parts + " " + state.value() + state.bad() + state.day() + seen(state);
  }

  private static int number(Map<String, Integer> seals, Optional<Fingerprint> seal) {
    int next = seals.size() + 1;
    return seal.map(each -> seals.computeIfAbsent(each.text(), any -> next)).orElse(0);
  }

  /** A state, and the numbers of the actions that led there. */
  private record Reached(State state, List<Integer> way) {}

  private static LifeModel model(List<Integer> way) {
    LifeModel model = new LifeModel(false);
    way.forEach(number -> ACTIONS.get(number).model().accept(model));
    return model;
  }

  private static List<String> names(List<Integer> way) {
    return way.stream().map(number -> ACTIONS.get(number).name()).toList();
  }

  @Test
  void booksDecideAsTheModelSays_inEveryStateThatTenActionsReachInSevenSteps() {
    State start = new State(new Books(Approvals.none(), Register.none()), 'A', false, 0);
    Set<String> known = new HashSet<>(Set.of(key(start)));
    Deque<Reached> open = new ArrayDeque<>(List.of(new Reached(start, List.of())));
    int steps = 0;
    while (!open.isEmpty()) {
      Reached reached = open.remove();
      for (int i = 0; i < ACTIONS.size(); i++) {
        steps++;
        State state = ACTIONS.get(i).program().apply(reached.state());
        List<Integer> way = new ArrayList<>(reached.way());
        way.add(i);
        assertThat(seen(state)).as("%s", names(way)).isEqualTo(model(way).seen());
        numbersAreGivenOnce(state, names(way));
        if (way.size() < DEPTH && known.add(key(state))) {
          open.add(new Reached(state, way));
        }
      }
    }
    System.out.printf(
        "life of a card: %d distinct states, %d steps, none against the model%n",
        known.size(), steps);
    assertThat(known).hasSizeGreaterThan(1000);
  }

  /** No issue number and no edition stands for two things, in whichever book. */
  private static void numbersAreGivenOnce(State state, List<String> way) {
    List<Ledger.Act> issues =
        state.books().ledger().acts().stream().filter(act -> act.deed() == Deed.ISSUE).toList();
    assertThat(issues).extracting(Ledger.Act::number).as("%s", way).doesNotHaveDuplicates();
    Map<Integer, CardEntry> editions = new HashMap<>();
    for (Json.Members kept : state.books().approvals().kept().values()) {
      Register.sealed(kept).stream()
          .map(Register.Sealed::entry)
          .filter(entry -> entry.deed() == Deed.ISSUE)
          .flatMap(entry -> entry.cards().stream())
          .filter(CardEntry::current)
          .forEach(card -> assertThat(editions.put(card.edition(), card)).as("%s", way).isNull());
    }
  }
}
