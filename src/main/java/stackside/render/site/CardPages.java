package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Phrase;
import stackside.render.plan.StepLine;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Grid;

/** The register of cards and, for each card, the page to which its short address leads. */
final class CardPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.of(
            Stream.of(register(site)),
            site.cards().stream().map(plan -> page(plan, site)),
            RegisterPages.of(site))
        .flatMap(pages -> pages);
  }

  static String path(CardPlan plan) {
    return "c/" + plan.code() + "/index.html";
  }

  private static Page register(Website site) {
    return site.publication().draft() ? drafts(site) : RegisterPages.cards(site);
  }

  private static Page drafts(Website site) {
    PageContext here = site.at("cards.html");
    List<Grid.GridRow> rows =
        site.cards().stream()
            .map(
                plan ->
                    Grid.GridRow.of(
                        here.page(
                            here.say("card.name", plan.room().title(), plan.title()), path(plan)),
                        here.link(plan.asset()),
                        here.page(here.say("card.pdf"), plan.path()),
                        RichLine.of(Integer.toString(plan.room().copies().value())),
                        RichLine.of(plan.address())))
            .toList();
    return new PlainPage(
        here.frame(here.say("menu.cards")),
        "plain",
        Optional.of(RichLine.of(here.say("cards.lead"))),
        List.of(
            here.section(
                "cards",
                rows.isEmpty()
                    ? new Part.Say(RichLine.of(here.say("none")))
                    : new Grid(
                        here.say("section.cards"),
                        List.of(
                            here.say("column.card"),
                            here.say("column.asset"),
                            here.say("column.print"),
                            here.say("column.copies"),
                            here.say("column.address")),
                        rows))));
  }

  private static Page page(CardPlan plan, Website site) {
    PageContext here = site.at(path(plan));
    List<Section> sections = new ArrayList<>();
    sections.add(standing(plan, here));
    for (Block block : plan.blocks()) {
      section(block, sections.size(), here).ifPresent(sections::add);
    }
    return new PlainPage(
        here.frame(
                here.say("card.title", plan.room().title(), plan.title()),
                here.page(here.say("menu.cards"), "cards.html"),
                here.link(plan.room()))
            .about(plan.asset().title()),
        "card",
        Optional.of(RichLine.of(here.say("card.lead"))),
        sections);
  }

  /** Whether the card is in use, according to the register; a draft never is. */
  private static Section standing(CardPlan plan, PageContext here) {
    return here.site()
        .publication()
        .editions()
        .register()
        .card(plan.name())
        .filter(card -> !here.site().publication().draft())
        .map(card -> RegisterPages.standing(card, here))
        .orElseGet(() -> draft(plan, here));
  }

  private static Section draft(CardPlan plan, PageContext here) {
    return here.section(
        "card-standing",
        new Part.Box("", List.of(RichLine.of(here.say("card.draft")))),
        new Facts(
            List.of(
                Answers.fact(here, "rooms", here.link(plan.room())),
                Answers.fact(here, "asset", here.link(plan.asset())),
                Answers.fact(here, "print", here.page(here.say("card.pdf"), plan.path())))));
  }

  /**
   * The words of one block. Drawings are on the page of the room.
   *
   * @param place position of the section on the page, which distinguishes drills
   */
  private static Optional<Section> section(Block block, int place, PageContext here) {
    if (block instanceof Block.Identity identity) {
      return Optional.of(identity(identity, here));
    }
    if (block instanceof Block.Marks marks) {
      return Optional.of(here.section("card-marks", new Part.Box("", lines(marks.marks()))));
    }
    if (block instanceof Block.MakeSafe makeSafe) {
      return Optional.of(here.section("make-safe", new Part.Box("", lines(makeSafe.lines()))));
    }
    if (block instanceof Block.SetUp setUp) {
      Part steps = new Part.Steps(steps(setUp.steps()));
      return Optional.of(section("set-up", setUp.heading(), steps));
    }
    if (block instanceof Block.Drilled drilled) {
      return Optional.of(drilled(drilled, "drill-" + place));
    }
    if (block instanceof Block.Answers answers) {
      return Optional.of(answers(answers, here));
    }
    if (block instanceof Block.Contacts contacts) {
      return Optional.of(contacts(contacts, here));
    }
    if (block instanceof Block.Footer footer) {
      return Optional.of(here.section("card-footer", new Part.Lines(lines(footer.lines()))));
    }
    if (block instanceof Block.Code code) {
      return Optional.of(
          here.section(
              "card-address", new Part.Lines(lines(List.of(code.caption(), code.address())))));
    }
    if (block instanceof Block.Maps) {
      return Optional.empty();
    }
    throw new IllegalStateException("say in CardPages.section what the page shows of it: " + block);
  }

  private static Section identity(Block.Identity identity, PageContext here) {
    return here.section(
        "card-identity",
        new Part.Lines(
            List.of(
                RichLine.of(
                    TextPiece.strong(identity.room().words() + ", " + identity.machine().words()),
                    TextPiece.of(", " + identity.asset().words())),
                line(identity.title()),
                line(identity.warning()))));
  }

  private static Section drilled(Block.Drilled drilled, String id) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part.Say(line(drilled.sign())));
    drilled.never().ifPresent(never -> parts.add(new Part.Say(line(never))));
    parts.add(new Part.Steps(steps(drilled.steps())));
    return section(id, drilled.title(), parts.toArray(Part[]::new));
  }

  private static Section answers(Block.Answers answers, PageContext here) {
    return here.section(
        "answers",
        new Grid(
            here.say("section.answers"),
            List.of(here.say("column.for"), here.say("column.answer")),
            answers.rows().stream().map(row -> row(row, answers.columns())).toList()));
  }

  private static Section contacts(Block.Contacts contacts, PageContext here) {
    return here.section(
        "contacts",
        new Part.Lines(
            contacts.calls().stream()
                .map(
                    call ->
                        RichLine.of(
                            TextPiece.strong(call.phone().words()),
                            TextPiece.of(" " + call.role().words() + ", " + call.hours().words())))
                .toList()));
  }

  private static Section section(String id, Phrase heading, Part... parts) {
    return new Section(id, heading.words(), List.of(parts));
  }

  private static RichLine line(Phrase phrase) {
    return RichLine.of(phrase.words());
  }

  private static List<RichLine> lines(List<Phrase> phrases) {
    return phrases.stream().map(CardPages::line).toList();
  }

  private static List<Part.Steps.Step> steps(List<StepLine> steps) {
    return steps.stream()
        .map(
            step ->
                new Part.Steps.Step(
                    line(step.action()), step.see().map(CardPages::line), List.of()))
        .toList();
  }

  private static Grid.GridRow row(AnswerRow row, List<Phrase> columns) {
    String asked = row.scopes().stream().map(CardPages::scope).collect(Collectors.joining("; "));
    List<TextPiece> answer = new ArrayList<>();
    row.cautions().forEach(caution -> answer.add(TextPiece.strong(caution.words() + " ")));
    answer.add(TextPiece.of(told(row.answer(), columns)));
    return Grid.GridRow.of(RichLine.of(asked), RichLine.of(answer.toArray(TextPiece[]::new)));
  }

  private static String scope(AnswerRow.Scope scope) {
    return scope.what().words()
        + ": "
        + scope.where().words()
        + scope.alternative().map(phrase -> " (" + phrase.words() + ")").orElse("");
  }

  /** The values in the order of the card, each after the head of its column. */
  private static String told(AnswerRow.Told told, List<Phrase> columns) {
    if (told instanceof AnswerRow.WithCurrent set) {
      List<String> cells = new ArrayList<>();
      cells.add(
          set.program().slot().map(slot -> slot.words() + " ").orElse("")
              + set.program().words().words());
      cells.add(set.socket().words());
      cells.add(set.instrument().words() + set.argonFlow().map(f -> ", " + f.words()).orElse(""));
      set.pedals().forEach(pedal -> cells.add(pedal(pedal)));
      return IntStream.range(0, cells.size())
          .mapToObj(i -> labelled(columns.get(i).words(), cells.get(i)))
          .collect(Collectors.joining("; "));
    }
    return told.phrases().map(Phrase::words).collect(Collectors.joining(" "));
  }

  private static String labelled(String head, String cell) {
    return head + (head.contains(":") ? ", " : ": ") + cell;
  }

  private static String pedal(AnswerRow.OnPedal pedal) {
    return Stream.of(Optional.of(pedal.mode()), pedal.level(), pedal.limit())
        .flatMap(Optional::stream)
        .map(Phrase::words)
        .collect(Collectors.joining(", "));
  }
}
