package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.Kind;
import stackside.model.SignedKind;
import stackside.model.UnitDetails;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds kinds of things that nobody signs or that are never reviewed. */
final class KindNeverSigned implements Rule {
  private static final Fault FAULT =
      new Fault(
          "kind-never-signed",
          Severity.ERROR,
          "a kind of thing is signed by nobody, or never reviewed");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    UnitDetails details = analysis.unit().details();
    List<Problem> found = new ArrayList<>();
    for (SignedKind kind : SignedKind.values()) {
      if (!details.signatures().containsKey(kind) && !analysis.unit().anyBroken(Kind.ROLE)) {
        found.add(
            FAULT
                .at(details.name().at(), "nobody signs a " + kind.word())
                .help("add the kind and its roles under 'signatures'"));
      } else if (!details.reviewAfter().containsKey(kind)) {
        found.add(
            FAULT
                .at(
                    details.name().at(),
                    "a %s is signed once and never reviewed".formatted(kind.word()))
                .help("add the kind and its interval under 'review-after'"));
      }
    }
    return found;
  }
}
