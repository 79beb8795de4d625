package stackside.render.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.model.Answer;
import stackside.model.Cold;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.NotApproved;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Role;
import stackside.model.Sentence;
import stackside.model.Settings;
import stackside.model.StoredProgram;
import stackside.model.Term;
import stackside.model.Unit;
import stackside.render.Numbers;
import stackside.render.SettingWords;
import stackside.render.Words;
import stackside.source.Location;

/** Describes an approved answer, or the lack of one, in the words of a card. */
final class ToldAnswers {

  private final Unit unit;
  private final Words words;
  private final List<PedalColour> pedals;

  /**
   * Creates the describer for one card.
   *
   * @param pedals those that have a column on the card
   */
  ToldAnswers(Unit unit, Words words, List<PedalColour> pedals) {
    this.unit = unit;
    this.words = words;
    this.pedals = List.copyOf(pedals);
  }

  AnswerRow.Told of(Profile profile) {
    Answer answer = profile.answer();
    if (answer instanceof Settings settings) {
      return withCurrent(settings);
    }
    if (answer instanceof Cold cold) {
      return inWords(
          AnswerRow.Means.COLD, words.say("card.cold"), cold.how().value(), cold.how().at());
    }
    if (answer instanceof NotApproved notApproved) {
      return notApproved(notApproved);
    }
    throw new IllegalStateException("an answer without words: " + answer);
  }

  /** The name of an alternative and when to use it; absent for a preferred answer. */
  Optional<Phrase> alternative(Profile profile) {
    return profile
        .alternative()
        .map(
            each ->
                Phrase.of(
                    words.say(
                        "card.alternative",
                        Sentence.within(each.name().value()),
                        Sentence.within(each.when().value())),
                    each.when().at()));
  }

  /** The only pedal to press, if there is one, and what to watch for in the author's words. */
  List<Phrase> cautions(Profile profile) {
    Stream<Phrase> pedal =
        profile.settings().flatMap(Settings::pressOnly).stream()
            .map(
                only -> new Phrase(words.say("card.press-only-" + only.value().word()), only.at()));
    Stream<Phrase> caution =
        profile.caution().stream()
            .map(
                prose ->
                    Phrase.of(
                        words.say("card.caution", WordLists.asSentence(prose.plain().strip())),
                        prose.at()));
    return Stream.concat(pedal, caution).toList();
  }

  /** Another generator of the room has the answer. */
  AnswerRow.Told elsewhere(Cell other) {
    Location at = other.offer().at();
    return new AnswerRow.InWords(
        AnswerRow.Means.ELSEWHERE,
        new Phrase(words.say("card.not-on-this", machineWord()), at),
        Phrase.of(
            words.say("card.use-other", other.asset().id().slug(), other.machine().title()), at));
  }

  /** Nobody has decided. */
  AnswerRow.Told none(Location at) {
    return nothing(words.say("card.no-answer"), words.say("card.no-answer-ask"), at);
  }

  /** The content has several preferred answers, and the card does not choose between them. */
  AnswerRow.Told several(Location at) {
    return nothing(words.say("card.several"), words.say("card.several-ask"), at);
  }

  private String machineWord() {
    Fact<String> own = unit.details().words().get(Term.MACHINE);
    return own == null ? words.say("word.generator") : own.value();
  }

  private AnswerRow.Told notApproved(NotApproved answer) {
    String whom =
        answer
            .ask()
            .map(role -> " " + words.say("card.ask", Sentence.within(title(role))))
            .orElse("");
    return nothing(
        words.say("card.not-approved"),
        WordLists.asSentence(answer.instead().value()) + whom,
        answer.instead().at());
  }

  private static String title(Fact<Role> role) {
    return role.value().title();
  }

  private static AnswerRow.Told nothing(String answer, String more, Location at) {
    return inWords(AnswerRow.Means.NOTHING, answer, more, at);
  }

  private static AnswerRow.Told inWords(
      AnswerRow.Means means, String answer, String more, Location at) {
    return new AnswerRow.InWords(means, new Phrase(answer, at), Phrase.of(more, at));
  }

  private AnswerRow.Told withCurrent(Settings settings) {
    return new AnswerRow.WithCurrent(
        settings.program().map(this::program).orElseGet(() -> byHand(settings.at())),
        Phrase.of(settings.socket().value().label().value(), settings.socket().at()),
        Phrase.of(settings.instrument().value().title(), settings.instrument().at()),
        settings
            .argonFlow()
            .map(
                flow ->
                    new Phrase(
                        words
                            .say("card.argon", Numbers.text(flow.value()))
                            .replace(' ', Numbers.BOUND),
                        flow.at())),
        pedals.stream().map(colour -> pedal(settings, colour)).toList());
  }

  private AnswerRow.Program program(StoredProgram program) {
    return new AnswerRow.Program(
        Optional.of(new Phrase(Integer.toString(program.slot().value()), program.slot().at())),
        Phrase.of(program.shownAs()));
  }

  private AnswerRow.Program byHand(Location at) {
    return new AnswerRow.Program(Optional.empty(), new Phrase(words.say("card.by-hand"), at));
  }

  /** For a pedal that this answer must not use, says so, and not what the pedal would do. */
  private AnswerRow.OnPedal pedal(Settings settings, PedalColour colour) {
    PedalUse use = settings.pedal(colour);
    return settings.forbids(colour)
        ? idle(AnswerRow.Pressing.FORBIDDEN, "card.do-not-press", use.at())
        : use.setting()
            .map(ToldAnswers::setting)
            .orElseGet(() -> idle(AnswerRow.Pressing.UNASSIGNED, "card.unassigned", use.at()));
  }

  private AnswerRow.OnPedal idle(AnswerRow.Pressing pressing, String key, Location at) {
    return AnswerRow.OnPedal.idle(pressing, new Phrase(words.say(key), at));
  }

  private static AnswerRow.OnPedal setting(PedalSetting setting) {
    Mode mode = setting.mode().value();
    return new AnswerRow.OnPedal(
        AnswerRow.Pressing.USED,
        Phrase.of(mode.title(), setting.mode().at()),
        setting
            .level()
            .map(level -> Phrase.of(SettingWords.level(mode, level.value()), level.at())),
        setting.limit().map(limit -> new Phrase(Numbers.text(limit.value()), limit.at())));
  }
}
