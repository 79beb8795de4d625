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
      if (isListed(kind)
          && !details.signatures().containsKey(kind)
          && !analysis.unit().anyBroken(Kind.ROLE)) {
        found.add(
            FAULT
                .at(details.name().at(), "nobody signs " + spoken(kind))
                .help("add the kind and its roles under 'signatures'"));
      } else if (kind != SignedKind.ROLE && !details.reviewAfter().containsKey(kind)) {
        found.add(
            FAULT
                .at(details.name().at(), never(kind))
                .help("add the kind and its interval under 'review-after'"));
      }
    }
    return found;
  }

  /** The policies are signed by whoever signs anything, and what a role signs by the role. */
  private static boolean isListed(SignedKind kind) {
    return kind != SignedKind.POLICIES && kind != SignedKind.ROLE;
  }

  private static String spoken(SignedKind kind) {
    return switch (kind) {
      case SOURCES, POLICIES -> "the " + kind.word();
      case ASSET -> "an asset";
      case PROFILE, MACHINE, DRILL, CHECKLIST, ROOM, ROLE -> "a " + kind.word();
    };
  }

  private static String never(SignedKind kind) {
    return switch (kind) {
      case SOURCES, POLICIES -> spoken(kind) + " are signed once and never reviewed";
      case PROFILE, MACHINE, DRILL, CHECKLIST, ROOM, ROLE, ASSET ->
          spoken(kind) + " is signed once and never reviewed";
    };
  }
}
