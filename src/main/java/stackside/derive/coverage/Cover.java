package stackside.derive.coverage;

import java.util.List;
import java.util.Optional;
import stackside.model.Profile;

/** What was found for one question: an answer, none, or more than one. */
public sealed interface Cover {

  /** The preferred answers found: none, one or several. */
  List<Profile> preferred();

  /** The alternatives found, in the order of the content. */
  List<Profile> alternatives();

  /** The one preferred answer. */
  default Optional<Profile> answer() {
    return preferred().size() == 1 ? Optional.of(preferred().get(0)) : Optional.empty();
  }

  /** Exactly one preferred answer. */
  record Answered(Profile profile, List<Profile> alternatives) implements Cover {
    public Answered {
      alternatives = List.copyOf(alternatives);
    }

    @Override
    public List<Profile> preferred() {
      return List.of(profile);
    }
  }

  /** No preferred answer; there may be alternatives. */
  record Gap(List<Profile> alternatives) implements Cover {
    public Gap {
      alternatives = List.copyOf(alternatives);
    }

    @Override
    public List<Profile> preferred() {
      return List.of();
    }
  }

  /** Two or more preferred answers. */
  record Ambiguous(List<Profile> preferred, List<Profile> alternatives) implements Cover {
    public Ambiguous {
      preferred = List.copyOf(preferred);
      alternatives = List.copyOf(alternatives);
      if (preferred.size() < 2) {
        throw new IllegalArgumentException("not ambiguous: " + preferred.size() + " answers");
      }
    }
  }

  /** No answer. However, a profile is broken, so its absence proves nothing. */
  record Unclear(List<Profile> alternatives) implements Cover {
    public Unclear {
      alternatives = List.copyOf(alternatives);
    }

    @Override
    public List<Profile> preferred() {
      return List.of();
    }
  }
}
