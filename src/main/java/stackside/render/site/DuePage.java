package stackside.render.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.edition.CardEntry;
import stackside.derive.standing.OutputCheckStanding;
import stackside.derive.standing.SignatureStanding;
import stackside.render.Mark;
import stackside.render.site.Part.Grid;

/** Everything that is due, earliest first: reviews, output checks, cards. */
final class DuePage implements Pages {

  /** One thing that is due. */
  private record Due(LocalDate by, String kind, RichLine what, String who) {}

  @Override
  public Stream<Page> of(Website site) {
    PageContext here = site.at("due.html");
    List<Due> due = all(here);
    return Stream.of(
        new PlainPage(
            here.frame(here.say("menu.due")),
            "plain",
            Optional.of(RichLine.of(here.say("due.lead", here.date(site.publication().on())))),
            List.of(
                here.section(
                    "due",
                    due.isEmpty()
                        ? new Part.Say(RichLine.of(here.say("none")))
                        : grid(due, here)))));
  }

  /** The first day on which something is due, including days in the past. */
  static Optional<LocalDate> next(Website site) {
    return all(site.at("due.html")).stream().map(Due::by).findFirst();
  }

  private static List<Due> all(PageContext here) {
    List<Due> due = new ArrayList<>(reviews(here));
    due.addAll(outputs(here));
    due.addAll(cards(here));
    due.sort(Comparator.comparing(Due::by).thenComparing(Due::kind));
    return due;
  }

  private static Grid grid(List<Due> due, PageContext here) {
    return new Grid(
        here.say("section.due"),
        Stream.of("due", "state", "falls-due", "for-what", "who")
            .map(column -> here.say("column." + column))
            .toList(),
        due.stream()
            .map(
                each ->
                    Grid.GridRow.of(
                        RichLine.of(here.date(each.by())),
                        state(each.by(), here),
                        RichLine.of(each.kind()),
                        each.what(),
                        RichLine.of(each.who().isEmpty() ? here.say("none") : each.who())))
            .toList());
  }

  private static RichLine state(LocalDate by, PageContext here) {
    LocalDate on = here.site().publication().on();
    if (on.isAfter(by)) {
      return PageContext.status(Mark.TRIANGLE, here.say("due.overdue"));
    }
    return on.plusMonths(1).isBefore(by)
        ? RichLine.of(here.say("due.later"))
        : PageContext.status(Mark.RING, here.say("due.soon"));
  }

  private static List<Due> reviews(PageContext here) {
    return here.site().standing().signatures().stream()
        .flatMap(
            each ->
                each.reviewBy().stream()
                    .map(
                        by ->
                            new Due(
                                by,
                                here.say("due.review"),
                                here.linkWithKind(each.thing().id()),
                                roles(each))))
        .toList();
  }

  private static String roles(SignatureStanding standing) {
    return standing.wanted().stream()
        .map(each -> each.role().title())
        .collect(Collectors.joining(", "));
  }

  private static List<Due> outputs(PageContext here) {
    return here.site().standing().outputChecks().stream()
        .filter(each -> each.state() != OutputCheckStanding.State.NO_LONGER_COUNTS)
        .flatMap(
            each ->
                each.dueBy().stream()
                    .map(
                        by ->
                            new Due(
                                by,
                                here.say("due.output"),
                                here.link(each.asset())
                                    .then(TextPiece.of(", "))
                                    .then(here.link(each.mode())),
                                "")))
        .toList();
  }

  private static List<Due> cards(PageContext here) {
    return here.site().publication().editions().register().cards().values().stream()
        .filter(CardEntry::current)
        .flatMap(
            card ->
                card.review().stream()
                    .map(
                        by ->
                            new Due(
                                by,
                                here.say("due.card"),
                                here.page(card.title(), RegisterPages.address(card)),
                                "")))
        .toList();
  }
}
