package stackside.derive.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A card as the content would have it now.
 *
 * @param name room, asset, face and part in lower case with hyphens
 * @param fingerprint of what it would say
 * @param approval who agreed to what it would say
 * @param review the first day on which something that it says falls due for review
 * @param changes what is new in what it says since the last issue, in words; may be empty
 * @param errors what is wrong with what it says, in words
 * @param unsettled what is not signed, read back or measured, in words
 * @param stops why it must not be used, though nobody decided so, in words
 */
public record Candidate(
    String name,
    String code,
    String title,
    String room,
    String asset,
    String path,
    int copies,
    String fingerprint,
    Optional<LocalDate> review,
    Optional<Approval> approval,
    List<String> changes,
    List<String> errors,
    List<String> unsettled,
    List<String> stops) {
  public Candidate {
    changes = List.copyOf(changes);
    errors = List.copyOf(errors);
    unsettled = List.copyOf(unsettled);
    stops = List.copyOf(stops);
  }

  boolean clean() {
    return errors.isEmpty() && unsettled.isEmpty() && stops.isEmpty();
  }

  String changed() {
    return changes.isEmpty() ? "what it says has changed" : String.join("; ", changes);
  }

  String reason() {
    return String.join("; ", errors.isEmpty() ? unsettled : errors);
  }

  /** The same with what a look at the finished card found wrong with it. */
  public Candidate wrong(List<String> more) {
    List<String> all = new ArrayList<>(errors);
    all.addAll(more);
    return new Candidate(
        name,
        code,
        title,
        room,
        asset,
        path,
        copies,
        fingerprint,
        review,
        approval,
        changes,
        all,
        unsettled,
        stops);
  }
}
