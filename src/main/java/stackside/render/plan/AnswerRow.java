package stackside.render.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Lesion;
import stackside.model.Site;

/**
 * One answer, with everything that it answers.
 *
 * @param scopes lesions and steps, with the sites where this is the answer
 * @param cautions what to watch for before using the answer; they apply to everything that the row
 *     answers
 */
public record AnswerRow(List<Scope> scopes, List<Phrase> cautions, Told answer) {

  /**
   * Lesions with their steps, and the sites in words.
   *
   * @param alternative if this is not the preferred answer: its name and when to use it
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

  /** What is answered, what to watch for, then the answer. */
  public Stream<Phrase> phrases() {
    return Stream.of(scopes.stream().flatMap(Scope::phrases), cautions.stream(), answer.phrases())
        .flatMap(each -> each);
  }

  /** An answer as printed on the card. */
  public sealed interface Told {
    Stream<Phrase> phrases();
  }

  /**
   * Settings: one value per column.
   *
   * @param program slot and displayed name, or a note that the machine has no programs
   * @param socket the socket's label as on the panel
   * @param pedals one per pedal column
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

  /** What an answer in words means. */
  public enum Means {
    COLD,
    /** Nothing may be set: it is not approved, or nobody has decided. */
    NOTHING,
    /** The answer is on another generator of the room. */
    ELSEWHERE
  }

  /** A stored program; without a slot, the words say what to do instead. */
  public record Program(Optional<Phrase> slot, Phrase words) {
    Stream<Phrase> phrases() {
      return Stream.concat(slot.stream(), Stream.of(words));
    }
  }

  /**
   * What a pedal does: a mode with its level and limit, or a note that it does nothing or must not
   * be pressed.
   */
  public record OnPedal(
      Pressing pressing, Phrase mode, Optional<Phrase> level, Optional<Phrase> limit) {

    /** A pedal that has no setting for this answer. */
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
    /** It has a setting, for another step, and must be left alone. */
    FORBIDDEN
  }
}
