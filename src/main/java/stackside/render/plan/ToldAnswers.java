package stackside.render.plan;

import java.util.Optional;
import stackside.derive.coverage.Cell;
import stackside.model.Answer;
import stackside.model.Cold;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.NotApproved;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Role;
import stackside.model.Settings;
import stackside.model.StoredProgram;
import stackside.model.Term;
import stackside.model.Unit;
import stackside.render.Numbers;
import stackside.render.Words;
import stackside.source.Location;

/** Puts an approved answer, or that there is none, into the words of a card. */
final class ToldAnswers {

  private final Unit unit;
  private final Words words;

  ToldAnswers(Unit unit, Words words) {
    this.unit = unit;
    this.words = words;
  }

  AnswerRow.Told of(Profile profile) {
    Answer answer = profile.answer();
    if (answer instanceof Settings settings) {
      return withCurrent(settings);
    }
    if (answer instanceof Cold cold) {
      return inWords(words.say("card.cold"), cold.how().value(), cold.how().at());
    }
    if (answer instanceof NotApproved notApproved) {
      return notApproved(notApproved);
    }
    throw new IllegalStateException("an answer without words: " + answer);
  }

  /** The name of an alternative and when to take it; absent for a preferred answer. */
  Optional<Phrase> alternative(Profile profile) {
    return profile
        .alternative()
        .map(
            each ->
                Phrase.of(
                    words.say(
                        "card.alternative",
                        WordLists.inSentence(each.name().value()),
                        WordLists.inSentence(each.when().value())),
                    each.when().at()));
  }

  /** What to mind before the answer is used, in the author's words. */
  Optional<Phrase> caution(Profile profile) {
    return profile
        .caution()
        .map(
            prose ->
                Phrase.of(
                    words.say("card.caution", WordLists.asSentence(prose.plain().strip())),
                    prose.at()));
  }

  /** Another generator of the room has the answer. */
  AnswerRow.Told elsewhere(Cell other) {
    Location at = other.offer().at();
    return new AnswerRow.Elsewhere(
        new Phrase(words.say("card.not-on-this", machineWord()), at),
        Phrase.of(
            words.say("card.use-other", other.asset().id().slug(), other.machine().title()), at));
  }

  /** Nobody has decided. */
  AnswerRow.Told none(Location at) {
    return inWords(words.say("card.no-answer"), words.say("card.no-answer-ask"), at);
  }

  /** The content has several preferred answers, and the card takes sides with none. */
  AnswerRow.Told several(Location at) {
    return inWords(words.say("card.several"), words.say("card.several-ask"), at);
  }

  private String machineWord() {
    Fact<String> own = unit.details().words().get(Term.MACHINE);
    return own == null ? words.say("word.generator") : own.value();
  }

  private AnswerRow.Told notApproved(NotApproved answer) {
    String whom =
        answer
            .ask()
            .map(role -> " " + words.say("card.ask", WordLists.inSentence(title(role))))
            .orElse("");
    return inWords(
        words.say("card.not-approved"),
        WordLists.asSentence(answer.instead().value()) + whom,
        answer.instead().at());
  }

  private static String title(Fact<Role> role) {
    return role.value().title();
  }

  private static AnswerRow.Told inWords(String answer, String more, Location at) {
    return new AnswerRow.InWords(new Phrase(answer, at), Phrase.of(more, at));
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
        pedal(settings.yellow()),
        pedal(settings.blue()));
  }

  private AnswerRow.Program program(StoredProgram program) {
    return new AnswerRow.Program(
        Optional.of(new Phrase(Integer.toString(program.slot().value()), program.slot().at())),
        Phrase.of(program.shownAs()));
  }

  private AnswerRow.Program byHand(Location at) {
    return new AnswerRow.Program(Optional.empty(), new Phrase(words.say("card.by-hand"), at));
  }

  private AnswerRow.OnPedal pedal(PedalUse use) {
    return use.setting()
        .map(this::setting)
        .orElseGet(
            () ->
                new AnswerRow.OnPedal(
                    new Phrase(words.say("card.unassigned"), use.at()),
                    Optional.empty(),
                    Optional.empty()));
  }

  private AnswerRow.OnPedal setting(PedalSetting setting) {
    Mode mode = setting.mode().value();
    return new AnswerRow.OnPedal(
        Phrase.of(mode.title(), setting.mode().at()),
        setting.level().map(level -> Phrase.of(levelName(mode) + level.value().text(), level.at())),
        setting.limit().map(limit -> new Phrase(Numbers.text(limit.value()), limit.at())));
  }

  /** What the display calls the level, before the level itself. */
  private static String levelName(Mode mode) {
    return mode.level().map(scale -> scale.name().value() + Numbers.BOUND).orElse("");
  }
}
