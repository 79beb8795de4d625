package stackside.render.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;
import stackside.derive.signed.Fingerprint;
import stackside.render.Mark;
import stackside.render.Numbers;
import stackside.render.plan.CardPlan;
import stackside.render.site.Part.Grid;

/**
 * What the register of issues says: which cards are in use, what each issue changed, and what has
 * become of cards that the current content no longer produces.
 */
final class RegisterPages {
  static final String CARDS = "cards.html";
  static final String CHANGES = "changes.html";
  private static final String CODES = "c/index.html";

  private RegisterPages() {}

  /**
   * What changed, the list of codes, and a page for each card that the content no longer produces.
   */
  static Stream<Page> of(Website site) {
    Register register = site.publication().editions().register();
    Set<String> made = site.cards().stream().map(CardPlan::name).collect(Collectors.toSet());
    return Stream.concat(
        Stream.of(changes(site, register), codes(site, register))
            .filter(page -> !register.entries().isEmpty() || page.frame().path().equals(CHANGES)),
        register.cards().values().stream()
            .filter(card -> !made.contains(card.name()))
            .map(card -> page(card, site)));
  }

  /** The pages that a withdrawal or a lifting makes new. */
  static Stream<Page> afterWithdrawal(Website site, List<CardEntry> down) {
    Register register = site.publication().editions().register();
    return Stream.concat(
        Stream.of(cards(site), changes(site, register), codes(site, register)),
        down.stream().map(card -> page(card, site)));
  }

  static String address(CardEntry card) {
    return "c/" + card.code() + "/index.html";
  }

  /** The register: every card ever issued, those out of use first. */
  static Page cards(Website site) {
    PageContext here = site.at(CARDS);
    Register register = site.publication().editions().register();
    List<CardEntry> cards = sorted(register);
    return new PlainPage(
        here.frame(here.say("menu.cards")),
        "plain",
        Optional.of(summary(register, here)),
        List.of(
            here.section(
                "register",
                new Grid(
                    here.say("section.register"),
                    columns(here, "state", "edition", "copies", "review-by", "print", "reason"),
                    cards.stream().map(card -> row(card, here)).toList()),
                new Part.Lines(
                    List.of(
                        here.page(here.say("register.changes"), CHANGES),
                        here.page(here.say("register.other-card"), CODES),
                        here.page(here.say("menu.due"), "due.html"))))));
  }

  private static List<CardEntry> sorted(Register register) {
    return register.cards().values().stream()
        .sorted(Comparator.comparing(CardEntry::current).thenComparing(CardEntry::title))
        .toList();
  }

  private static RichLine summary(Register register, PageContext here) {
    List<CardEntry> inUse = register.cards().values().stream().filter(CardEntry::current).toList();
    return RichLine.of(
        here.say(
            "register.summary",
            inUse.size(),
            inUse.stream().mapToInt(CardEntry::copies).sum(),
            register.cards().size() - inUse.size(),
            register.last().map(RegisterEntry::on).map(here::date).orElse("")));
  }

  private static List<String> columns(PageContext here, String... keys) {
    return Stream.concat(Stream.of("card"), Stream.of(keys))
        .map(key -> here.say("column." + key))
        .toList();
  }

  private static Grid.GridRow row(CardEntry card, PageContext here) {
    RichLine none = RichLine.of(here.say("none"));
    return Grid.GridRow.of(
        here.page(card.title(), address(card)),
        state(card, here),
        edition(card, here),
        card.current() ? RichLine.of(copies(card, here)) : none,
        card.review().map(here::date).map(RichLine::of).orElse(none),
        card.current() ? here.page(here.say("card.pdf"), card.path()) : none,
        RichLine.of(Numbers.bind(card.reason())));
  }

  /** Each laminated copy, by the number written on it. */
  private static String copies(CardEntry card, PageContext here) {
    return IntStream.rangeClosed(1, card.copies())
        .mapToObj(copy -> here.say("register.copy", copy, card.copies()))
        .collect(Collectors.joining(", "));
  }

  private static RichLine edition(CardEntry card, PageContext here) {
    return RichLine.of(
        here.say("register.edition", Integer.toString(card.edition()), here.date(card.since())));
  }

  /** The state of a card in words, with its shape. */
  private static RichLine state(CardEntry card, PageContext here) {
    return card.current()
        ? PageContext.status(Mark.DISC, here.say("register.current"))
        : PageContext.status(Mark.SQUARE, here.say("register.out-of-use"));
  }

  /** The first section of a card's page: whether a card on the wall is the one in use. */
  static Section standing(CardEntry card, PageContext here) {
    List<Part> parts = new ArrayList<>();
    parts.add(check(card, here));
    parts.add(
        new Part.Facts(
            Stream.of(
                    Answers.fact(here, "asset", RichLine.of(card.asset())),
                    Answers.fact(here, "copies", RichLine.of(copies(card, here))),
                    Answers.fact(here, "fingerprint", RichLine.of(card.fingerprint())),
                    Answers.fact(
                        here,
                        "print",
                        card.current()
                            ? here.page(here.say("card.pdf"), card.path())
                            : RichLine.of(here.say("none"))))
                .toList()));
    parts.add(history(card, here));
    parts.add(
        new Part.Lines(
            List.of(
                here.page(here.say("register.changes"), CHANGES),
                here.page(here.say("register.other-card"), CODES))));
    return here.section("card-standing", parts.toArray(Part[]::new));
  }

  private static Part.CardCheck check(CardEntry card, PageContext here) {
    String edition = Integer.toString(card.edition());
    List<RichLine> lines = new ArrayList<>();
    Optional<String> alarm =
        Optional.ofNullable(here.site().publication().editions().alarms().get(card.name()));
    alarm.ifPresent(
        words -> lines.add(PageContext.status(Mark.TRIANGLE, here.say("check.alarm", words))));
    lines.add(
        card.current()
            ? PageContext.status(
                Mark.DISC, here.say("check.in-use", edition, here.date(card.since())))
            : PageContext.status(Mark.SQUARE, here.say("check.out-of-use")));
    lines.add(
        RichLine.of(
            card.current() ? here.say("check.others") : here.say("check.why", card.reason())));
    if (card.current()) {
      card.review().ifPresent(day -> lines.add(review(day, here)));
    }
    lines.add(RichLine.of(here.say("check.as-of", here.date(here.site().publication().on()))));
    return new Part.CardCheck(
        card.current() ? edition + "-" + mark(card) : "",
        card.review().filter(day -> card.current()).map(Object::toString).orElse(""),
        lines,
        List.of(
            answer("same", Mark.DISC, here, "check.same"),
            answer("other", Mark.SQUARE, here, "check.other"),
            answer("superseded", Mark.SQUARE, here, "check.superseded"),
            answer("unknown", Mark.TRIANGLE, here, "check.unknown"),
            answer("draft", Mark.SQUARE, here, "check.draft"),
            answer("overdue", Mark.TRIANGLE, here, "check.overdue-today")));
  }

  /** What the code holds behind the edition: the first signs of the card's fingerprint. */
  private static String mark(CardEntry card) {
    return new Fingerprint(card.fingerprint()).mark();
  }

  private static RichLine review(java.time.LocalDate day, PageContext here) {
    return here.site().publication().on().isAfter(day)
        ? PageContext.status(Mark.TRIANGLE, here.say("check.overdue", here.date(day)))
        : RichLine.of(here.say("check.review-by", here.date(day)));
  }

  /** The words, with a placeholder for the edition named in the address. */
  private static Part.CardCheck.Answer answer(
      String when, Mark mark, PageContext here, String key) {
    String[] words = here.say(key, "|").split("\\|", -1);
    RichLine line = PageContext.status(mark, words[0].stripTrailing()).then(TextPiece.of(" "));
    for (int i = 1; i < words.length; i++) {
      line =
          line.then(
              new TextPiece("", Optional.empty(), Optional.empty(), "yours"),
              TextPiece.strong(words[i]));
    }
    return new Part.CardCheck.Answer(when, line);
  }

  /** Every edition of the card, latest first. */
  private static Part history(CardEntry card, PageContext here) {
    List<Grid.GridRow> rows = new ArrayList<>();
    for (RegisterEntry entry : here.site().publication().editions().register().entries()) {
      entry.cards().stream()
          .filter(each -> each.name().equals(card.name()))
          .forEach(
              each ->
                  rows.add(
                      0,
                      Grid.GridRow.of(
                          RichLine.of(here.date(entry.on())),
                          RichLine.of(Integer.toString(each.edition())),
                          each.edition() < card.edition() && each.current()
                              ? PageContext.status(Mark.RING, here.say("register.superseded"))
                              : state(each, here),
                          RichLine.of(Numbers.bind(each.reason())))));
    }
    return new Grid(
        here.say("register.history"),
        Stream.of("date", "edition", "state", "reason")
            .map(key -> here.say("column." + key))
            .toList(),
        rows);
  }

  /** The page of a card that stays at its last edition, or is out of use. */
  private static Page page(CardEntry card, Website site) {
    PageContext here = site.at(address(card));
    Section standing = standing(card, here);
    List<Part> parts = new ArrayList<>(standing.parts());
    if (card.current() && site.publication().editions().waiting().contains(card.name())) {
      parts.add(1, new Part.Say(RichLine.of(here.say("register.stays"))));
    }
    return new PlainPage(
        here.frame(here.say("card.of", card.title()), here.page(here.say("menu.cards"), CARDS)),
        "card",
        Optional.empty(),
        List.of(new Section(standing.id(), standing.heading(), parts)));
  }

  /** Every code known to this copy of the site, for a card whose code leads nowhere. */
  private static Page codes(Website site, Register register) {
    PageContext here = site.at(CODES);
    List<Grid.GridRow> rows =
        register.cards().values().stream()
            .sorted(Comparator.comparing(CardEntry::code))
            .map(
                card ->
                    Grid.GridRow.of(
                        here.page(card.code(), address(card)),
                        RichLine.of(card.title()),
                        state(card, here),
                        edition(card, here)))
            .toList();
    return new PlainPage(
        here.frame(here.say("codes.title"), here.page(here.say("menu.cards"), CARDS)),
        "plain",
        Optional.of(RichLine.of(here.say("codes.lead", here.date(here.site().publication().on())))),
        List.of(
            here.section(
                "codes",
                rows.isEmpty()
                    ? new Part.Say(RichLine.of(here.say("changes.none")))
                    : new Grid(
                        here.say("section.codes"),
                        Stream.of("code", "card", "state", "edition")
                            .map(key -> here.say("column." + key))
                            .toList(),
                        rows))));
  }

  private static Page changes(Website site, Register register) {
    PageContext here = site.at(CHANGES);
    List<Section> sections = new ArrayList<>();
    if (site.publication().draft()) {
      sections.add(SinceSigned.section(here));
    }
    Register before = Register.none();
    int count = 0;
    for (RegisterEntry entry : register.entries()) {
      sections.add(
          sections.isEmpty() || !site.publication().draft() ? 0 : 1, section(entry, before, here));
      count++;
      before = register.upTo(count);
    }
    if (register.entries().isEmpty()) {
      sections.add(here.section("changes", new Part.Say(RichLine.of(here.say("changes.none")))));
    }
    return new PlainPage(
        here.frame(here.say("register.changes"), here.page(here.say("menu.cards"), CARDS)),
        "plain",
        Optional.of(RichLine.of(here.say("register.lead"))),
        sections);
  }

  private static Section section(RegisterEntry entry, Register before, PageContext here) {
    String heading =
        here.say(
            "register." + entry.deed().word(),
            Integer.toString(entry.number()),
            here.date(entry.on()),
            entry.by().map(role -> role(role, here)).orElse(""));
    List<Grid.GridRow> rows =
        entry.cards().stream().map(card -> row(card, before.card(card.name()), here)).toList();
    return new Section(
        entry.deed().word() + "-" + entry.number(),
        heading,
        Stream.<Part>concat(
                Stream.of(entry.why(), lifted(entry, here))
                    .filter(words -> !words.isEmpty())
                    .map(words -> new Part.Say(RichLine.of(Numbers.bind(words)))),
                Stream.of(
                    rows.isEmpty()
                        ? new Part.Say(RichLine.of(here.say("register.no-card")))
                        : new Grid(
                            heading, columns(here, "to-print", "to-take-down", "reason"), rows)))
            .toList());
  }

  private static String lifted(RegisterEntry entry, PageContext here) {
    return entry.lifted().isEmpty()
        ? ""
        : here.say("register.lifted", String.join(", ", entry.lifted()));
  }

  private static String role(String id, PageContext here) {
    return here.unit().details().roles().stream()
        .filter(role -> role.id().slug().equals(id))
        .map(role -> role.title())
        .findFirst()
        .orElse(id);
  }

  private static Grid.GridRow row(CardEntry card, Optional<CardEntry> before, PageContext here) {
    RichLine none = RichLine.of(here.say("none"));
    return Grid.GridRow.of(
        here.page(card.title(), address(card)),
        card.current()
            ? RichLine.of(here.say("register.print", card.edition(), card.copiesInWords()))
            : none,
        before
            .filter(CardEntry::current)
            .map(old -> RichLine.of(here.say("register.take", old.edition(), old.copiesInWords())))
            .orElse(none),
        RichLine.of(Numbers.bind(card.reason())));
  }
}
