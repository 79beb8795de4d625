package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.output.Measured;
import stackside.derive.program.Mismatch;
import stackside.derive.program.ProgramCheck;
import stackside.derive.program.SlotReading;
import stackside.derive.standing.GoneStanding;
import stackside.derive.standing.OutputCheckStanding;
import stackside.derive.standing.SignatureStanding;
import stackside.model.OutputCheck;
import stackside.model.Role;
import stackside.model.ServiceEvent;
import stackside.quantity.Watts;
import stackside.render.Mark;
import stackside.render.Numbers;
import stackside.render.site.Part.Grid;

/** The state of the unit on the day: signatures, stored programs and output checks, worst first. */
final class StandingPage implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    PageContext here = site.at("standing.html");
    return Stream.of(
        new PlainPage(
            here.frame(here.say("menu.standing")),
            "plain",
            Optional.of(RichLine.of(here.say("standing.lead", here.date(site.publication().on())))),
            List.of(
                here.section("signed", signatures(here)),
                here.section("programs", programs(here)),
                here.section("outputs-checked", outputs(here)))));
  }

  /** The number of things that are not as they should be. */
  static long open(Website site) {
    return site.standing().signatures().stream()
            .filter(each -> each.state() != SignatureStanding.State.SIGNED)
            .count()
        + site.standing().gone().size()
        + site.standing().programs().all().stream()
            .filter(each -> each.verdict() != ProgramCheck.Verdict.AGREES)
            .count()
        + site.standing().outputChecks().stream()
            .filter(each -> each.state() != OutputCheckStanding.State.CHECKED)
            .count();
  }

  private static Part signatures(PageContext here) {
    Stream<Grid.GridRow> gone = here.site().standing().gone().stream().map(each -> row(each, here));
    Stream<Grid.GridRow> there =
        here.site().standing().signatures().stream()
            .sorted((a, b) -> a.state().compareTo(b.state()))
            .map(each -> row(each, here));
    List<Grid.GridRow> rows = Stream.concat(gone, there).toList();
    return grid(
        rows,
        "section.signed",
        here,
        "column.what",
        "column.state",
        "column.missing",
        "column.review-by");
  }

  /** A thing without a page, because only its deletion still has to be signed. */
  private static Grid.GridRow row(GoneStanding gone, PageContext here) {
    return Grid.GridRow.of(
        RichLine.of(
            TextPiece.quiet(here.kind(gone.thing().kind()) + " "),
            TextPiece.of(gone.thing().slug())),
        PageContext.status(Mark.TRIANGLE, here.say("signature.gone")),
        RichLine.of(roles(gone.missing().stream())),
        RichLine.of(here.say("none")));
  }

  private static String roles(Stream<Role> roles) {
    return roles.map(Role::title).collect(Collectors.joining(", "));
  }

  private static Grid.GridRow row(SignatureStanding standing, PageContext here) {
    String missing = roles(standing.missing().stream().map(SignatureStanding.Wanted::role));
    return Grid.GridRow.of(
        here.linkWithKind(standing.thing().id()),
        PageContext.status(
            standing.state() == SignatureStanding.State.SIGNED ? Mark.DISC : Mark.TRIANGLE,
            here.say("signature." + standing.state().word())),
        RichLine.of(missing.isEmpty() ? here.say("none") : missing),
        RichLine.of(standing.reviewBy().map(here::date).orElse(here.say("none"))));
  }

  private static Part programs(PageContext here) {
    List<Grid.GridRow> rows =
        here.site().standing().programs().all().stream()
            .sorted((a, b) -> rank(a) - rank(b))
            .map(each -> row(each, here))
            .toList();
    return grid(
        rows,
        "section.programs",
        here,
        "column.asset",
        "column.program",
        "column.state",
        "column.read-on",
        "column.differs");
  }

  private static int rank(ProgramCheck check) {
    return switch (check.verdict()) {
      case DIFFERS -> 0;
      case NEVER_READ -> 1;
      case NO_LONGER_COUNTS -> 2;
      case AGREES -> 3;
    };
  }

  private static Grid.GridRow row(ProgramCheck check, PageContext here) {
    String verdict =
        switch (check.verdict()) {
          case DIFFERS -> "program.differs";
          case NEVER_READ -> "program.never-read";
          case NO_LONGER_COUNTS -> "program.no-longer-counts";
          case AGREES -> "program.agrees";
        };
    Mark mark = check.verdict() == ProgramCheck.Verdict.AGREES ? Mark.DISC : Mark.TRIANGLE;
    return Grid.GridRow.of(
        here.link(check.asset()),
        RichLine.of(
                here.say(
                        "answer.program-slot",
                        check.program().slot().value(),
                        check.program().shownAs().value())
                    + ", ")
            .then(here.link(check.profile())),
        PageContext.status(mark, here.say(verdict)),
        RichLine.of(
            check.reading().map(reading -> here.date(reading.date())).orElse(here.say("none"))),
        RichLine.of(differs(check, here)));
  }

  /** What differs; for two programs stored in each other's slots, only that. */
  private static String differs(ProgramCheck check, PageContext here) {
    if (check.swappedWith().isPresent()) {
      return here.say("program.swapped", check.program().slot().value(), check.swappedWith().get());
    }
    Optional<ServiceEvent> event = check.reading().flatMap(SlotReading::endedBy);
    if (event.isPresent()) {
      return ended(event.get(), here);
    }
    return check.mismatches().isEmpty()
        ? here.say("none")
        : check.mismatches().stream()
            .map(mismatch -> words(mismatch, here))
            .collect(Collectors.joining("; "));
  }

  private static String ended(ServiceEvent event, PageContext here) {
    return here.say(
        "standing.ended-by", event.event().value().spoken(), here.date(event.date().value()));
  }

  private static String words(Mismatch mismatch, PageContext here) {
    return mismatch.pedal().map(colour -> here.choice(colour) + " ").orElse("")
        + here.choice(mismatch.field())
        + ": "
        + here.say(
            "program.read-against",
            mismatch.read().orElse(here.say("none")),
            mismatch.approved().orElse(here.say("none")));
  }

  private static Part outputs(PageContext here) {
    List<Grid.GridRow> rows =
        here.site().standing().outputChecks().stream()
            .sorted((a, b) -> a.state().compareTo(b.state()))
            .map(each -> row(each, here))
            .toList();
    return grid(
        rows,
        "section.outputs-checked",
        here,
        "column.asset",
        "column.mode",
        "column.state",
        "column.measured-expected",
        "column.due");
  }

  private static Grid.GridRow row(OutputCheckStanding standing, PageContext here) {
    return Grid.GridRow.of(
        here.link(standing.asset()),
        here.link(standing.mode()),
        PageContext.status(
            standing.state() == OutputCheckStanding.State.CHECKED ? Mark.DISC : Mark.TRIANGLE,
            here.say("output-check." + standing.state().word())),
        measured(standing, here),
        RichLine.of(standing.dueBy().map(here::date).orElse(here.say("none"))));
  }

  /** The latest measurements, each beside the value expected at that load. */
  private static RichLine measured(OutputCheckStanding standing, PageContext here) {
    List<String> words = new ArrayList<>();
    standing.last().forEach(each -> words.add(measured(each, here)));
    standing.endedBy().ifPresent(event -> words.add(ended(event, here)));
    return RichLine.of(words.isEmpty() ? here.say("none") : String.join("; ", words));
  }

  private static String measured(Measured measured, PageContext here) {
    OutputCheck check = measured.check();
    String found =
        here.say(
            "standing.measured",
            Numbers.text(check.watts().value()),
            Numbers.text(check.load().value()),
            here.date(check.date().value()));
    return found
        + ", "
        + switch (measured.verdict()) {
          case WITHIN, TOO_LOW, TOO_HIGH ->
              here.say(
                  "standing.expected",
                  Numbers.text(rounded(measured.tolerated().from())),
                  Numbers.text(rounded(measured.tolerated().to())));
          case TOO_SMALL_TO_JUDGE -> here.say("standing.too-small");
          case NOT_PUBLISHED -> here.say("standing.not-published");
        };
  }

  private static Watts rounded(Watts power) {
    return new Watts(Math.rint(power.value()));
  }

  private static Part grid(
      List<Grid.GridRow> rows, String caption, PageContext here, String... columns) {
    List<String> head = new ArrayList<>();
    for (String column : columns) {
      head.add(here.say(column));
    }
    return rows.isEmpty()
        ? new Part.Say(RichLine.of(here.say("none")))
        : new Grid(here.say(caption), head, rows);
  }
}
