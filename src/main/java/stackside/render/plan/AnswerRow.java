package stackside.render.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Lesion;
import stackside.model.Site;

/**
 * One answer, with all that it answers.
 *
 * @param scopes lesions and steps with the sites where this is the answer
 * @param cautions what to mind before the answer is used, for all that the row answers
 */
public record AnswerRow(List<Scope> scopes, List<Phrase> cautions, Told answer) {

  /**
   * Lesions with their steps, and the sites in words.
   *
   * @param alternative where this is not the preferred answer: its name and when to take it
   * @param lesions the same as {@code what}, as things
   * @param sites the same as {@code where}, as things
   */
  public record Scope(
      Phrase what,
      Phrase where,
      Optional<Phrase> alternative,
      List<Lesion> lesions,
      List<Site> sites) {
    public Scope {
      lesions = List.copyOf(lesions);
      sites = List.copyOf(sites);
    }

    Stream<Phrase> phrases() {
      return Stream.concat(Stream.of(what, where), alternative.stream());
    }
  }

  public AnswerRow {
    scopes = List.copyOf(scopes);
    cautions = List.copyOf(cautions);
  }

  /** Whether the answer is on another generator of the room. */
  boolean elsewhere() {
    return answer instanceof InWords words && words.means() == Means.ELSEWHERE;
  }

  /** What is answered, what to mind, then the answer. */
  public Stream<Phrase> phrases() {
    return Stream.of(scopes.stream().flatMap(Scope::phrases), cautions.stream(), answer.phrases())
        .flatMap(each -> each);
  }

  /** An answer as the card tells it. */
  public sealed interface Told {
    Stream<Phrase> phrases();
  }

  /**
   * Settings: a value in each column.
   *
   * @param program slot and displayed name, or that the machine has no programs
   * @param socket the socket's label as on the panel
   * @param pedals one for each column of pedals
   */
  public record WithCurrent(
      Program program,
      Phrase socket,
      Phrase instrument,
      Optional<Phrase> argonFlow,
      List<OnPedal> pedals)
      implements Told {
    public WithCurrent {
      pedals = List.copyOf(pedals);
    }

    @Override
    public Stream<Phrase> phrases() {
      return Stream.of(
              program.phrases(),
              Stream.of(socket, instrument),
              argonFlow.stream(),
              pedals.stream().flatMap(OnPedal::phrases))
          .flatMap(each -> each);
    }
  }

  /** An answer in words. */
  public record InWords(Means means, Phrase answer, Phrase words) implements Told {
    @Override
    public Stream<Phrase> phrases() {
      return Stream.of(answer, words);
    }
  }

  /** What an answer in words comes to. */
  public enum Means {
    COLD,
    /** Nothing may be set: not approved, or nobody has decided. */
    NOTHING,
    /** The answer is on another generator of the room. */
    ELSEWHERE
  }

  /** A stored program; without a slot the words say what to do instead. */
  public record Program(Optional<Phrase> slot, Phrase words) {
    Stream<Phrase> phrases() {
      return Stream.concat(slot.stream(), Stream.of(words));
    }
  }

  /**
   * What a pedal does: a mode with its level and limit, or the words that it does nothing or must
   * not be pressed.
   */
  public record OnPedal(
      Pressing pressing, Phrase mode, Optional<Phrase> level, Optional<Phrase> limit) {

    /** One without a setting for this answer. */
    static OnPedal idle(Pressing pressing, Phrase words) {
      return new OnPedal(pressing, words, Optional.empty(), Optional.empty());
    }

    Stream<Phrase> phrases() {
      return Stream.of(Stream.of(mode), level.stream(), limit.stream()).flatMap(each -> each);
    }
  }

  /** Whether a pedal is pressed in an answer. */
  public enum Pressing {
    USED,
    UNASSIGNED,
    /** It has a setting, of another step, and must be left alone. */
    FORBIDDEN
  }
}
