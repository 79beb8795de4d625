package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.program.Mismatch;
import stackside.derive.program.ProgramCheck;
import stackside.derive.standing.OutputCheckStanding;
import stackside.derive.standing.SignatureStanding;
import stackside.render.Mark;
import stackside.render.site.Part.Grid;

/** Where the unit stands on the day: signatures, stored programs, output checks, worst first. */
final class StandingPage implements Pages {

  @Override
  public Stream<Page> of(Site site) {
    Here here = site.at("standing.html");
    return Stream.of(
        new PlainPage(
            here.frame(here.say("menu.standing")),
            "plain",
            Optional.of(Line.of(here.say("standing.lead", here.date(site.publication().on())))),
            List.of(
                here.section("signed", signatures(here)),
                here.section("programs", programs(here)),
                here.section("outputs-checked", outputs(here)))));
  }

  /** How many things are not as they should be. */
  static long open(Site site) {
    return site.standing().signatures().stream()
            .filter(each -> each.state() != SignatureStanding.State.SIGNED)
            .count()
        + site.standing().programs().all().stream()
            .filter(each -> each.verdict() != ProgramCheck.Verdict.AGREES)
            .count()
        + site.standing().outputChecks().stream()
            .filter(each -> each.state() != OutputCheckStanding.State.CHECKED)
            .count();
  }

  private static Part signatures(Here here) {
    List<Grid.Row> rows =
        here.site().standing().signatures().stream()
            .sorted((a, b) -> a.state().compareTo(b.state()))
            .map(each -> row(each, here))
            .toList();
    return grid(
        rows,
        "section.signed",
        here,
        "column.what",
        "column.state",
        "column.missing",
        "column.review-by");
  }

  private static Grid.Row row(SignatureStanding standing, Here here) {
    String missing =
        standing.missing().stream()
            .map(each -> each.role().value().title())
            .collect(Collectors.joining(", "));
    return Grid.Row.of(
        here.linkWithKind(standing.thing().id()),
        Here.status(
            standing.state() == SignatureStanding.State.SIGNED ? Mark.DISC : Mark.TRIANGLE,
            here.say("signature." + standing.state().word())),
        Line.of(missing.isEmpty() ? here.say("none") : missing),
        Line.of(standing.reviewBy().map(here::date).orElse(here.say("none"))));
  }

  private static Part programs(Here here) {
    List<Grid.Row> rows =
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

  private static Grid.Row row(ProgramCheck check, Here here) {
    String verdict =
        switch (check.verdict()) {
          case DIFFERS -> "program.differs";
          case NEVER_READ -> "program.never-read";
          case NO_LONGER_COUNTS -> "program.no-longer-counts";
          case AGREES -> "program.agrees";
        };
    Mark mark = check.verdict() == ProgramCheck.Verdict.AGREES ? Mark.DISC : Mark.TRIANGLE;
    List<String> differs =
        check.mismatches().stream().map(mismatch -> words(mismatch, here)).toList();
    return Grid.Row.of(
        here.link(check.asset()),
        Line.of(
                here.say(
                        "answer.program-slot",
                        check.program().slot().value(),
                        check.program().shownAs().value())
                    + ", ")
            .then(here.link(check.profile())),
        Here.status(mark, here.say(verdict)),
        Line.of(differs.isEmpty() ? here.say("none") : String.join("; ", differs)));
  }

  private static String words(Mismatch mismatch, Here here) {
    return mismatch.pedal().map(colour -> here.choice(colour) + " ").orElse("")
        + here.choice(mismatch.field())
        + ": "
        + here.say(
            "program.read-against",
            mismatch.read().orElse(here.say("none")),
            mismatch.approved().orElse(here.say("none")));
  }

  private static Part outputs(Here here) {
    List<Grid.Row> rows =
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
        "column.due");
  }

  private static Grid.Row row(OutputCheckStanding standing, Here here) {
    return Grid.Row.of(
        here.link(standing.asset()),
        here.link(standing.mode()),
        Here.status(
            standing.state() == OutputCheckStanding.State.CHECKED ? Mark.DISC : Mark.TRIANGLE,
            here.say("output-check." + standing.state().word())),
        Line.of(standing.dueBy().map(here::date).orElse(here.say("none"))));
  }

  private static Part grid(List<Grid.Row> rows, String caption, Here here, String... columns) {
    List<String> head = new ArrayList<>();
    for (String column : columns) {
      head.add(here.say(column));
    }
    return rows.isEmpty()
        ? new Part.Say(Line.of(here.say("none")))
        : new Grid(here.say(caption), head, rows);
  }
}
