package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.standing.SignatureStanding;
import stackside.model.Alternative;
import stackside.model.Answer;
import stackside.model.Cold;
import stackside.model.NotApproved;
import stackside.model.PedalColour;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Sentence;
import stackside.model.Settings;
import stackside.model.Term;
import stackside.render.Mark;
import stackside.render.Numbers;
import stackside.render.PedalPlan;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Facts.Fact;

/** Describes an approved answer in lines: what it is, what is set, what goes where. */
final class Answers {

  private Answers() {}

  /** The address of an answer in a room. */
  static String page(Room room, Profile profile) {
    return "answers/" + room.id().slug() + "/" + profile.id().slug() + ".html";
  }

  /** What the answer is for: lesions, step and sites. */
  static String question(Profile profile) {
    return lesions(profile) + ": " + Sentence.within(profile.step().value().title());
  }

  /** Question, sites and machine: the name of an answer in a list of several. */
  static String name(Profile profile) {
    return question(profile)
        + profile.alternative().map(other -> ", " + other.name().value()).orElse("")
        + " ("
        + sites(profile)
        + "; "
        + profile.machine().value().title()
        + ")";
  }

  static String lesions(Profile profile) {
    return Numbers.bind(
        String.join("; ", profile.lesions().stream().map(each -> each.value().title()).toList()));
  }

  static String sites(Profile profile) {
    return String.join(", ", profile.sites().stream().map(each -> each.value().title()).toList());
  }

  /**
   * The status word of an answer, with its shape. An answer that nobody has signed, or that has
   * changed since, is not called approved.
   */
  static RichLine status(Profile profile, PageContext here) {
    Answer answer = profile.answer();
    if (answer instanceof NotApproved) {
      return PageContext.status(Mark.SQUARE, here.say("answer.not-approved"));
    }
    if (answer instanceof Cold) {
      return approved("answer.cold.", profile, here);
    }
    if (answer instanceof Settings) {
      return approved("answer.settings.", profile, here);
    }
    throw new IllegalStateException("an answer without a word: " + answer);
  }

  private static RichLine approved(String kind, Profile profile, PageContext here) {
    SignatureStanding.State state = state(profile, here);
    boolean signed =
        switch (state) {
          case SIGNED, REVIEW_OVERDUE -> true;
          case UNSIGNED, CHANGED_SINCE -> false;
        };
    return PageContext.status(signed ? Mark.DISC : Mark.RING, here.say(kind + state.word()));
  }

  /** In a unit that asks for no signatures, writing an answer approves it. */
  private static SignatureStanding.State state(Profile profile, PageContext here) {
    return here.site()
        .standing()
        .signaturesOf(profile.id())
        .map(SignatureStanding::state)
        .orElse(SignatureStanding.State.SIGNED);
  }

  /** An answer in one line, for tables. */
  static RichLine brief(Profile profile, PageContext here) {
    RichLine line = status(profile, here);
    Answer answer = profile.answer();
    if (answer instanceof Settings settings) {
      return line.then(TextPiece.of(". " + program(settings, here)));
    }
    return line;
  }

  /** The slot and displayed name of a program. */
  static String program(Settings settings, PageContext here) {
    return settings
        .program()
        .map(
            program ->
                here.say("answer.program-slot", program.slot().value(), program.shownAs().value()))
        .orElse(here.say("answer.by-hand"));
  }

  /** A note that only one pedal may be pressed. */
  static Optional<String> pressOnly(Profile profile, PageContext here) {
    return profile
        .settings()
        .flatMap(Settings::pressOnly)
        .map(only -> here.say("card.press-only-" + only.value().word()));
  }

  /**
   * A note that only one pedal may be pressed, then what to watch for, in the words of the card.
   */
  static List<String> cautions(Profile profile, PageContext here) {
    Stream<String> caution =
        profile.caution().stream()
            .map(prose -> here.say("card.caution", Numbers.bind(prose.plain().strip())));
    return Stream.concat(pressOnly(profile, here).stream(), caution).toList();
  }

  /** The name of an alternative, and when to use it. */
  static RichLine alternative(Alternative alternative, PageContext here) {
    return RichLine.of(
        TextPiece.strong(alternative.name().value()),
        TextPiece.of(". " + here.say("answer.alternative", alternative.when().value())));
  }

  /**
   * When to use it and what to watch for, then what to set, in a few short lines. For cold or not
   * approved: what to do.
   */
  static List<RichLine> summary(Profile profile, PageContext here) {
    List<RichLine> lines = new ArrayList<>();
    profile.alternative().ifPresent(each -> lines.add(alternative(each, here)));
    cautions(profile, here).forEach(words -> lines.add(RichLine.of(TextPiece.strong(words))));
    Answer answer = profile.answer();
    if (answer instanceof Settings settings) {
      lines.add(RichLine.of(program(settings, here)));
      for (PedalColour colour : pedals(profile, settings)) {
        String words = String.join(", ", PedalPlan.words(settings, colour, here.words()));
        lines.add(RichLine.of(here.say("fact.pedal-" + colour.word()) + ": " + words));
      }
    } else if (answer instanceof Cold cold) {
      lines.add(RichLine.of(Numbers.bind(cold.how().value())));
    } else if (answer instanceof NotApproved not) {
      lines.add(RichLine.of(Numbers.bind(not.instead().value())));
    } else {
      throw new IllegalStateException("an answer without a summary: " + answer);
    }
    return lines;
  }

  /** All facts of an answer, in the order in which they are set up. */
  static Facts facts(Profile profile, PageContext here) {
    List<Fact> facts = new ArrayList<>();
    facts.add(fact(here, "answer", status(profile, here)));
    Answer answer = profile.answer();
    if (answer instanceof Settings settings) {
      settings(facts, settings, pedals(profile, settings), here);
    } else if (answer instanceof Cold cold) {
      facts.add(fact(here, "how", RichLine.of(Numbers.bind(cold.how().value()))));
    } else if (answer instanceof NotApproved not) {
      facts.add(fact(here, "instead", RichLine.of(Numbers.bind(not.instead().value()))));
      not.ask().ifPresent(role -> facts.add(fact(here, "ask", here.link(role.value()))));
    } else {
      throw new IllegalStateException("an answer without facts: " + answer);
    }
    here.site()
        .standing()
        .signaturesOf(profile.id())
        .ifPresent(standing -> signatures(facts, standing, here));
    return new Facts(facts);
  }

  private static void signatures(List<Fact> facts, SignatureStanding standing, PageContext here) {
    if (!standing.missing().isEmpty()) {
      facts.add(
          new Fact(
              here.say("column.missing"),
              standing.missing().stream().map(each -> here.link(each.role())).toList()));
    }
  }

  /** The pedals used with the machine, and any others that the answer sets. */
  private static List<PedalColour> pedals(Profile profile, Settings settings) {
    List<PedalColour> there =
        profile.machine().value().footSwitches().stream()
            .flatMap(footSwitch -> footSwitch.value().pedals().stream())
            .map(pedal -> pedal.colour().value())
            .toList();
    return Stream.of(PedalColour.values())
        .filter(colour -> there.contains(colour) || settings.pedal(colour).setting().isPresent())
        .toList();
  }

  private static void settings(
      List<Fact> facts, Settings settings, List<PedalColour> pedals, PageContext here) {
    facts.add(fact(here, "program", RichLine.of(TextPiece.strong(program(settings, here)))));
    facts.add(fact(here, "instrument", here.link(settings.instrument().value())));
    facts.add(
        fact(
            here,
            "socket",
            RichLine.of(
                    TextPiece.shown(settings.socket().value().label().value()), TextPiece.of(" "))
                .then(
                    here.link(
                        settings.socket().value(), settings.socket().value().name().value()))));
    for (PedalColour colour : pedals) {
      facts.add(fact(here, "pedal-" + colour.word(), pedal(settings, colour, here)));
    }
    settings
        .neutralElectrode()
        .ifPresent(
            plate ->
                facts.add(
                    new Fact(
                        here.term(Term.NEUTRAL_ELECTRODE), List.of(here.link(plate.value())))));
    settings
        .argonFlow()
        .ifPresent(
            flow ->
                facts.add(
                    fact(
                        here, "argon", RichLine.of(TextPiece.strong(Numbers.text(flow.value()))))));
  }

  /** Mode and setting of a pedal; a pedal that must not be pressed says so first. */
  static RichLine pedal(Settings settings, PedalColour colour, PageContext here) {
    PedalUse use = settings.pedal(colour);
    return settings.forbids(colour)
        ? RichLine.of(
            TextPiece.strong(here.say("answer.do-not-press")),
            TextPiece.of(
                ". "
                    + here.say(
                        "answer.forbidden-set",
                        String.join(", ", PedalPlan.words(use, here.words())))))
        : pedal(use, here);
  }

  private static RichLine pedal(PedalUse use, PageContext here) {
    Optional<RichLine> set =
        use.setting()
            .map(
                setting -> {
                  List<String> words = PedalPlan.words(use, here.words());
                  RichLine mode = here.link(setting.mode().value());
                  return words.size() < 2
                      ? mode
                      : mode.then(TextPiece.of(", "), TextPiece.strong(words.get(1)));
                });
    return set.orElse(RichLine.of(here.say("answer.unassigned")));
  }

  static Fact fact(PageContext here, String key, RichLine... values) {
    return new Fact(here.say("fact." + key), List.of(values));
  }
}
