package stackside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.output.Measured;
import stackside.derive.program.Mismatch;
import stackside.derive.program.ProgramCheck;
import stackside.derive.program.SlotReading;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Decisions;
import stackside.derive.signed.SignedFacts;
import stackside.derive.standing.GoneStanding;
import stackside.derive.standing.OutputCheckStanding;
import stackside.derive.standing.SignatureStanding;
import stackside.derive.standing.Standing;
import stackside.model.Alarm;
import stackside.model.OutputCheck;
import stackside.model.Role;
import stackside.model.ServiceEvent;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.Watts;

/**
 * One thing that does not stand as it should on a day: not signed, out of date, not read back, not
 * measured. It keeps cards from being issued, and is no mistake in the content.
 *
 * @param about the thing
 * @param basis by what it is judged
 * @param words what is the matter, as the end of a sentence about the thing
 * @param details what changed, one a line
 * @param alarm what it raises, where it speaks against a card that hangs
 */
record OpenItem(
    ThingId about, Basis basis, String words, List<String> details, Optional<Alarm> alarm) {

  /** What it is judged by. */
  enum Basis {
    SIGNATURES,
    READINGS,
    OUTPUT_CHECKS
  }

  OpenItem {
    details = List.copyOf(details);
  }

  private OpenItem(ThingId about, Basis basis, String words) {
    this(about, basis, words, List.of());
  }

  /** One that speaks against no card that hangs. */
  OpenItem(ThingId about, Basis basis, String words, List<String> details) {
    this(about, basis, words, details, Optional.empty());
  }

  private OpenItem raising(Alarm raised) {
    return new OpenItem(about, basis, words, details, Optional.of(raised));
  }

  /** Everything that is open on the day of the standing. */
  static List<OpenItem> of(Unit unit, Standing standing, Approvals approvals) {
    List<OpenItem> matters = new ArrayList<>();
    Decisions decisions = approvals.on(standing.on());
    standing.signatures().forEach(each -> of(unit, each, decisions).ifPresent(matters::add));
    standing.gone().forEach(each -> matters.add(of(each)));
    matters.addAll(ofRecords(standing));
    return List.copyOf(matters);
  }

  /** What is the matter with programs and outputs. */
  static List<OpenItem> ofRecords(Standing standing) {
    List<OpenItem> matters = new ArrayList<>();
    standing.programs().all().forEach(each -> of(each).ifPresent(matters::add));
    standing.outputChecks().forEach(each -> of(each).ifPresent(matters::add));
    return List.copyOf(matters);
  }

  private static OpenItem of(GoneStanding gone) {
    return new OpenItem(
        gone.thing(),
        Basis.SIGNATURES,
        "gone from the content, and that is not signed by " + roles(gone.missing().stream()));
  }

  private static Optional<OpenItem> of(Unit unit, SignatureStanding signed, Decisions decisions) {
    ThingId thing = signed.thing().id();
    return switch (signed.state()) {
      case SIGNED -> Optional.empty();
      case UNSIGNED ->
          Optional.of(new OpenItem(thing, Basis.SIGNATURES, "not signed by " + roles(signed)));
      case CHANGED_SINCE ->
          Optional.of(
              new OpenItem(
                  thing,
                  Basis.SIGNATURES,
                  "changed since it was signed, and not signed again by " + roles(signed),
                  changes(unit, signed, decisions)));
      case REVIEW_OVERDUE ->
          Optional.of(
              new OpenItem(
                      thing,
                      Basis.SIGNATURES,
                      "overdue for review"
                          + signed.reviewBy().map(day -> " since " + day).orElse(""))
                  .raising(Alarm.REVIEW_OVERDUE));
    };
  }

  private static String roles(SignatureStanding signed) {
    return roles(signed.missing().stream().map(SignatureStanding.Wanted::role));
  }

  private static String roles(Stream<Role> roles) {
    return roles.map(role -> role.id().slug()).collect(Collectors.joining(" and "));
  }

  private static List<String> changes(Unit unit, SignatureStanding signed, Decisions decisions) {
    return SignedFacts.of(unit, signed.thing())
        .flatMap(decisions::sinceSigned)
        .map(
            since ->
                since.changes().stream()
                    .map(
                        change ->
                            change.words()
                                + " (signed "
                                + since.decision().day()
                                + " by "
                                + since.decision().role()
                                + ")")
                    .toList())
        .orElse(List.of());
  }

  private static Optional<OpenItem> of(ProgramCheck check) {
    ThingId asset = check.asset().id();
    String slot = "slot " + check.program().slot().value();
    return switch (check.verdict()) {
      case AGREES -> Optional.empty();
      case NEVER_READ ->
          Optional.of(new OpenItem(asset, Basis.READINGS, slot + " was never read back"));
      case NO_LONGER_COUNTS ->
          Optional.of(
              new OpenItem(
                  asset,
                  Basis.READINGS,
                  slot
                      + " was not read back since "
                      + check
                          .reading()
                          .flatMap(SlotReading::endedBy)
                          .map(OpenItem::words)
                          .orElse("the machine was changed")));
      case DIFFERS ->
          Optional.of(
              check
                  .swappedWith()
                  .map(other -> swapped(asset, check.program().slot().value(), other))
                  .orElseGet(
                      () ->
                          new OpenItem(
                              asset,
                              Basis.READINGS,
                              slot + " does not hold what is approved",
                              check.mismatches().stream().map(OpenItem::words).toList()))
                  .raising(Alarm.PROGRAM_DIFFERS));
    };
  }

  private static OpenItem swapped(ThingId asset, int slot, int other) {
    return new OpenItem(
        asset,
        Basis.READINGS,
        "slots %s and %s are swapped: each holds what is approved for the other"
            .formatted(Math.min(slot, other), Math.max(slot, other)));
  }

  private static String words(ServiceEvent event) {
    return "the %s of %s".formatted(event.event().value().spoken(), event.date().value());
  }

  private static String words(Mismatch mismatch) {
    return mismatch.pedal().map(pedal -> pedal.word() + " pedal, ").orElse("")
        + mismatch.field().spoken()
        + ": approved "
        + mismatch.approved().orElse("nothing")
        + ", read "
        + mismatch.read().orElse("nothing");
  }

  private static Optional<OpenItem> of(OutputCheckStanding check) {
    String mode = "output of " + check.mode().id().local();
    Optional<String> words =
        switch (check.state()) {
          case CHECKED -> Optional.empty();
          case NEVER_CHECKED -> Optional.of(mode + " was never measured");
          case NO_LONGER_COUNTS ->
              Optional.of(
                  mode
                      + " was not measured since "
                      + check.endedBy().map(OpenItem::words).orElse("the machine was changed"));
          case OUT_OF_TOLERANCE -> Optional.of(mode + " was measured out of tolerance");
          case OVERDUE ->
              Optional.of(
                  mode
                      + " is overdue for measuring"
                      + check.dueBy().map(d -> " since " + d).orElse(""));
        };
    List<String> details = check.last().stream().flatMap(each -> words(each).stream()).toList();
    Optional<Alarm> alarm =
        switch (check.state()) {
          case OUT_OF_TOLERANCE -> Optional.of(Alarm.OUTPUT_OUT_OF_TOLERANCE);
          case OVERDUE -> Optional.of(Alarm.CHECK_OVERDUE);
          case CHECKED, NEVER_CHECKED, NO_LONGER_COUNTS -> Optional.empty();
        };
    return words.map(
        each -> new OpenItem(check.asset().id(), Basis.OUTPUT_CHECKS, each, details, alarm));
  }

  private static Optional<String> words(Measured measured) {
    String side =
        switch (measured.verdict()) {
          case TOO_LOW -> "too low";
          case TOO_HIGH -> "too high";
          case WITHIN, TOO_SMALL_TO_JUDGE, NOT_PUBLISHED -> "";
        };
    OutputCheck check = measured.check();
    return side.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "%s: %s at %s on %s (%s), expected from %s to %s"
                .formatted(
                    side,
                    check.watts().value(),
                    check.load().value(),
                    check.date().value(),
                    check.method().value(),
                    rounded(measured.tolerated().from()),
                    rounded(measured.tolerated().to())));
  }

  private static Watts rounded(Watts power) {
    return new Watts(Math.rint(power.value() * 10) / 10);
  }

  /** Items with the same words are reported together. */
  static Stream<String> told(List<OpenItem> matters) {
    return matters.stream()
        .collect(Collectors.groupingBy(OpenItem::words, LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .flatMap(group -> told(group.getKey(), group.getValue()));
  }

  private static Stream<String> told(String words, List<OpenItem> matters) {
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
                    matter.details().stream().map(line -> "  " + matter.about() + ": " + line))
            .distinct());
  }
}
