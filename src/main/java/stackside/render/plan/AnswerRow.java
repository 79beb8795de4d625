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
 * @param caution what to mind before the answer is used, for all that the row answers
 */
public record AnswerRow(List<Scope> scopes, Optional<Phrase> caution, Told answer) {

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
  }

  /** What is answered, what to mind, then the answer. */
  public Stream<Phrase> phrases() {
    return Stream.of(scopes.stream().flatMap(Scope::phrases), caution.stream(), answer.phrases())
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
   */
  public record WithCurrent(
      Program program,
      Phrase socket,
      Phrase instrument,
      Optional<Phrase> argonFlow,
      OnPedal yellow,
      OnPedal blue)
      implements Told {
    @Override
    public Stream<Phrase> phrases() {
      return Stream.of(
              program.phrases(),
              Stream.of(socket, instrument),
              argonFlow.stream(),
              yellow.phrases(),
              blue.phrases())
          .flatMap(each -> each);
    }
  }

  /** An answer in words: cold, not approved, or none. */
  public record InWords(Phrase answer, Phrase words) implements Told {
    @Override
    public Stream<Phrase> phrases() {
      return Stream.of(answer, words);
    }
  }

  /** The answer is on another generator of the room. */
  public record Elsewhere(Phrase answer, Phrase words) implements Told {
    @Override
    public Stream<Phrase> phrases() {
      return Stream.of(answer, words);
    }
  }

  /** A stored program; without a slot the words say what to do instead. */
  public record Program(Optional<Phrase> slot, Phrase words) {
    Stream<Phrase> phrases() {
      return Stream.concat(slot.stream(), Stream.of(words));
    }
  }

  /** What a pedal does: a mode with its level and limit, or the word that it does nothing. */
  public record OnPedal(Phrase mode, Optional<Phrase> level, Optional<Phrase> limit) {
    Stream<Phrase> phrases() {
      return Stream.of(Stream.of(mode), level.stream(), limit.stream()).flatMap(each -> each);
    }
  }
}
