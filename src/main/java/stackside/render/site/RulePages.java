package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.check.RulePage;
import stackside.render.Links;
import stackside.source.Fault;
import stackside.source.Note;
import stackside.source.Problem;
import stackside.source.Severity;

/** A page for every kind of mistake, and a list of the mistakes in the content now. */
final class RulePages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.concat(
        Stream.of(index(site), problems(site)),
        site.publication().faults().stream().map(fault -> page(fault, site)));
  }

  private static Page index(Website site) {
    PageContext here = site.at("rules.html");
    List<Part.Grid.GridRow> rows =
        site.publication().faults().stream()
            .map(
                fault ->
                    Part.Grid.GridRow.of(
                        rule(fault, here),
                        RichLine.of(here.say("severity." + fault.severity().word())),
                        RichLine.of(fault.summary()),
                        RichLine.of(Long.toString(count(fault, site)))))
            .toList();
    return new PlainPage(
        here.frame(here.say("menu.rules")),
        "plain",
        Optional.of(RichLine.of(here.say("rules.lead"))),
        List.of(
            here.section(
                "rules",
                new Part.Grid(
                    here.say("section.rules"),
                    List.of(
                        here.say("column.rule"),
                        here.say("column.severity"),
                        here.say("column.summary"),
                        here.say("column.now")),
                    rows))));
  }

  private static long count(Fault fault, Website site) {
    return site.publication().problems().stream()
        .filter(problem -> problem.fault().id().equals(fault.id()))
        .count();
  }

  private static RichLine rule(Fault fault, PageContext here) {
    boolean known =
        here.site().publication().faults().stream().anyMatch(f -> f.id().equals(fault.id()));
    return known
        ? RichLine.of(TextPiece.link(fault.id(), Links.toRule(fault.id()).from(here.path())))
        : RichLine.of(fault.id());
  }

  private static Page page(Fault fault, Website site) {
    PageContext here = site.at(Links.toRule(fault.id()).page());
    List<Section> sections = new ArrayList<>();
    RulePage.of(fault)
        .ifPresent(
            words -> {
              sections.add(here.section("what-it-checks", parts(words.whatItChecks())));
              sections.add(here.section("why-it-matters", parts(words.whyItMatters())));
              sections.add(here.section("wrong", parts(words.wrong())));
              sections.add(here.section("right", parts(words.right())));
            });
    List<Part> found = new ArrayList<>();
    site.publication().problems().stream()
        .filter(problem -> problem.fault().id().equals(fault.id()))
        .forEach(problem -> found.add(new Part.Lines(lines(problem, here))));
    sections.add(
        here.section(
            "now-found",
            found.isEmpty()
                ? new Part[] {new Part.Say(RichLine.of(here.say("rule.none-now")))}
                : found.toArray(Part[]::new)));
    return new PlainPage(
        here.frame(fault.id(), here.page(here.say("menu.rules"), "rules.html")),
        "plain",
        Optional.of(
            RichLine.of(
                here.say("severity." + fault.severity().word()) + ": " + fault.summary() + ".")),
        sections);
  }

  private static Part[] parts(String markdown) {
    return RuleWords.parts(markdown).toArray(Part[]::new);
  }

  private static Page problems(Website site) {
    PageContext here = site.at("problems.html");
    Map<String, List<Problem>> byFile = new LinkedHashMap<>();
    site.publication()
        .problems()
        .forEach(
            problem ->
                byFile.computeIfAbsent(problem.at().file(), any -> new ArrayList<>()).add(problem));
    List<Section> sections = new ArrayList<>();
    byFile.forEach(
        (file, problems) ->
            sections.add(
                new Section(
                    "file-" + file.replaceAll("[^A-Za-z0-9]+", "-"),
                    file,
                    List.of(grid(file, problems, here)))));
    if (sections.isEmpty()) {
      sections.add(here.section("problems", new Part.Say(RichLine.of(here.say("problems.none")))));
    }
    long errors =
        site.publication().problems().stream()
            .filter(problem -> problem.severity() == Severity.ERROR)
            .count();
    long others = site.publication().problems().size() - errors;
    return new PlainPage(
        here.frame(here.say("menu.problems")),
        "plain",
        Optional.of(RichLine.of(here.say("problems.lead", errors, others))),
        sections);
  }

  private static Part grid(String file, List<Problem> problems, PageContext here) {
    return new Part.Grid(
        here.say("problems.caption", file),
        List.of(
            here.say("column.line"),
            here.say("column.severity"),
            here.say("column.message"),
            here.say("column.help"),
            here.say("column.rule")),
        problems.stream()
            .map(
                problem ->
                    Part.Grid.GridRow.of(
                        RichLine.of(Integer.toString(problem.at().line())),
                        RichLine.of(here.say("severity." + problem.severity().word())),
                        RichLine.of(problem.message()),
                        RichLine.joined(help(problem, here), "; "),
                        rule(problem.fault(), here)))
            .toList());
  }

  private static List<RichLine> help(Problem problem, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
    for (Note note : problem.notes()) {
      lines.add(RichLine.of(note.message() + " (" + note.at().file() + ":" + note.at().line() + ")"));
    }
    problem.help().ifPresent(help -> lines.add(RichLine.of(help)));
    return lines.isEmpty() ? List.of(RichLine.of(here.say("none"))) : lines;
  }

  private static List<RichLine> lines(Problem problem, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
    lines.add(
        RichLine.of(
            TextPiece.link(problem.at().file() + ":" + problem.at().line(), here.to("problems.html")),
            TextPiece.of(" " + problem.message())));
    return lines;
  }
}
