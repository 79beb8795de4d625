package stackside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.program.Mismatch;
import stackside.derive.program.ProgramCheck;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.SignedFacts;
import stackside.derive.standing.OutputCheckStanding;
import stackside.derive.standing.SignatureStanding;
import stackside.derive.standing.Standing;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * One thing that does not stand as it should on a day: not signed, out of date, not read back, not
 * measured. It keeps cards from being issued, and is no mistake in the content.
 *
 * @param about the thing
 * @param words what is the matter, as the end of a sentence about the thing
 * @param details what changed, one a line
 */
record Matter(ThingId about, String words, List<String> details) {

  Matter {
    details = List.copyOf(details);
  }

  private Matter(ThingId about, String words) {
    this(about, words, List.of());
  }

  /** Everything that is the matter on the day of the standing. */
  static List<Matter> of(Unit unit, Standing standing, Approvals approvals) {
    List<Matter> matters = new ArrayList<>();
    standing.signatures().forEach(each -> of(unit, each, approvals).ifPresent(matters::add));
    standing.programs().all().forEach(each -> of(each).ifPresent(matters::add));
    standing.outputChecks().forEach(each -> of(each).ifPresent(matters::add));
    return List.copyOf(matters);
  }

  private static Optional<Matter> of(Unit unit, SignatureStanding signed, Approvals approvals) {
    ThingId thing = signed.thing().id();
    return switch (signed.state()) {
      case SIGNED -> Optional.empty();
      case UNSIGNED -> Optional.of(new Matter(thing, "not signed by " + roles(signed)));
      case CHANGED_SINCE ->
          Optional.of(
              new Matter(
                  thing,
                  "changed since it was signed, and not signed again by " + roles(signed),
                  changes(unit, signed, approvals)));
      case REVIEW_OVERDUE ->
          Optional.of(
              new Matter(
                  thing,
                  "overdue for review" + signed.reviewBy().map(day -> " since " + day).orElse("")));
    };
  }

  private static String roles(SignatureStanding signed) {
    return signed.missing().stream()
        .map(wanted -> wanted.role().value().id().slug())
        .collect(Collectors.joining(" and "));
  }

  private static List<String> changes(Unit unit, SignatureStanding signed, Approvals approvals) {
    return SignedFacts.of(unit, signed.thing())
        .flatMap(approvals::sinceSigned)
        .map(
            since ->
                since.changes().stream()
                    .map(
                        change ->
                            change.words()
                                + " (signed "
                                + since.entry().date()
                                + " by "
                                + since.entry().role()
                                + ")")
                    .toList())
        .orElse(List.of());
  }

  private static Optional<Matter> of(ProgramCheck check) {
    ThingId asset = check.asset().id();
    String slot = "slot " + check.program().slot().value();
    return switch (check.verdict()) {
      case AGREES -> Optional.empty();
      case NEVER_READ -> Optional.of(new Matter(asset, slot + " was never read back"));
      case NO_LONGER_COUNTS ->
          Optional.of(
              new Matter(asset, slot + " was not read back since the machine was last changed"));
      case DIFFERS ->
          Optional.of(
              new Matter(
                  asset,
                  slot + " does not hold what is approved as " + check.profile().id().slug(),
                  check.mismatches().stream().map(Matter::words).toList()));
    };
  }

  private static String words(Mismatch mismatch) {
    return mismatch.pedal().map(pedal -> pedal.word() + " pedal, ").orElse("")
        + mismatch.field().spoken()
        + ": approved "
        + mismatch.approved().orElse("nothing")
        + ", read "
        + mismatch.read().orElse("nothing");
  }

  private static Optional<Matter> of(OutputCheckStanding check) {
    String mode = "output of " + check.mode().id().local();
    Optional<String> words =
        switch (check.state()) {
          case CHECKED -> Optional.empty();
          case NEVER_CHECKED -> Optional.of(mode + " was never measured");
          case NO_LONGER_COUNTS ->
              Optional.of(mode + " was not measured since the machine was last changed");
          case OUT_OF_TOLERANCE -> Optional.of(mode + " was measured out of tolerance");
          case OVERDUE ->
              Optional.of(
                  mode
                      + " is overdue for measuring"
                      + check.dueBy().map(d -> " since " + d).orElse(""));
        };
    return words.map(each -> new Matter(check.asset().id(), each));
  }

  /** Matters in the same words are told together. */
  static Stream<String> told(List<Matter> matters) {
    return matters.stream()
        .collect(Collectors.groupingBy(Matter::words, LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .flatMap(group -> told(group.getKey(), group.getValue()));
  }

  private static Stream<String> told(String words, List<Matter> matters) {
    String things =
        matters.stream()
            .map(matter -> matter.about().toString())
            .distinct()
            .collect(Collectors.joining(", "));
    return Stream.concat(
        Stream.of(words + ": " + things),
        matters.stream()
            .flatMap(
                matter ->
                    matter.details().stream().map(line -> "  " + matter.about() + ": " + line)));
  }
}
