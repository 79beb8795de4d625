package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Option;
import stackside.content.NearNames;
import stackside.derive.edition.Books;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.RegisterEntry;
import stackside.derive.edition.Stop;
import stackside.derive.signed.Decisions;
import stackside.derive.standing.Signers;
import stackside.model.Initials;
import stackside.model.Role;
import stackside.model.SignedKind;
import stackside.model.Unit;
import stackside.publish.OutputFolder;
import stackside.publish.SafeFile;

/**
 * Says that what was out of use may be issued again, in the role that the unit names, with a
 * reason. The cards come back with the next issue.
 */
final class LiftCommand implements Command {
  private static final CommandSpec.Place WHAT =
      new CommandSpec.Place(
          "CARD",
          true,
          "What was withdrawn: a card by its name, code or address, or asset:NUMBER.");
  private static final Option REASON =
      CommandSpec.required("reason", "WORDS", "Why it may be used again, in words for everybody.");
  private static final Option ROLE =
      CommandSpec.required("role", "ROLE", "The role that lifts, as unit.yaml says under 'lifts'.");
  private static final Option INITIALS =
      CommandSpec.required("initials", "INITIALS", "The initials of the person.");
  private static final Option OUT =
      CommandSpec.option("out", "FOLDER", "The issued site folder; 'site' if none is named.");
  private static final Option CONTENT =
      CommandSpec.option("content", "FOLDER", "The content; 'content' if none is named.");
  static final CommandSpec FORM =
      new CommandSpec(
          "lift",
          "Ends a withdrawal, or what a bad record stopped, so that the next issue may bring the"
              + " cards back. The generator's programs must have been read and its output measured"
              + " first; it says what is missing.",
          Optional.of(WHAT),
          List.of(REASON, ROLE, INITIALS, OUT, CONTENT, ContentOptions.ON));

  private final CommandContext desk;
  private final String named;
  private final String reason;
  private final String role;
  private final String initials;
  private final Path out;
  private final ContentOptions asked;

  LiftCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.named = given.place().orElseThrow();
    this.reason = given.text(REASON).orElseThrow();
    this.role = given.text(ROLE).orElseThrow();
    this.initials = given.text(INITIALS).orElseThrow();
    this.out = given.path(OUT).orElse(Path.of("site"));
    this.asked =
        new ContentOptions(
            given.path(CONTENT).orElse(Path.of("content")),
            given.day(ContentOptions.ON),
            Format.TEXT);
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    if (!Initials.are(initials)) {
      throw new UsageException(
          "'" + initials + "' are no initials; give " + Initials.FORM_IN_WORDS);
    }
    if (reason.isBlank()) {
      throw new UsageException("say why, with --reason");
    }
    ApprovalFiles files = ApprovalFiles.in(desk.surroundings().disk(), desk.contentFolder(asked));
    try (OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), desk.path(out));
        SafeFile ledger = files.hold()) {
      IssuedSite site = IssuedSite.in(folder, out);
      CheckedContent judged = new LastIssue(site.register(), out).compared(desk.judged(asked));
      if (judged.analysis().isEmpty() || judged.errors().anyMatch(ErrorScope::isLedger)) {
        desk.close(
            asked,
            RunResult.of("lift", desk.day(asked), judged).with(List.of("nothing was lifted")));
        return ExitCode.CONTENT;
      }
      Books read = new Books(judged.approvals(), site.register());
      Books before = read.adopted();
      LocalDate day = desk.dayOf(asked.on(), before);
      refuseAnotherRole(judged.analysis().get().unit(), judged.approvals().on(day));
      Stop stop = stop(before);
      if (isTooEarly(judged, stop, before)) {
        return ExitCode.CONTENT;
      }
      RegisterEntry entry =
          before.lifting(day, role, List.of(stop.what()), reason + " (" + initials + ")");
      List<CardEntry> meant = meant(before, stop).toList();
      IssuedSite.After after = site.after(entry, meant, day);
      folder.replace(after.files());
      files.write(judged.approvals(), before.with(after.entry(), initials).approvals(), ledger);
      folder.notices().forEach(notice -> desk.console().problem("note: " + notice));
      site.notes().forEach(note -> desk.console().problem("note: " + note));
      desk.console()
          .result(stop.what() + " may be issued again; the next 'issue' brings its cards back");
    }
    return ExitCode.CLEAN;
  }

  private static java.util.stream.Stream<CardEntry> meant(Books books, Stop stop) {
    return books.register().cards().values().stream()
        .filter(card -> !card.current() && stop.isAbout(card));
  }

  private Stop stop(Books books) throws UsageException {
    Stop byName = books.register().stops().get(named);
    if (byName != null) {
      return byName;
    }
    for (CardEntry card : books.register().cards().values()) {
      Optional<Stop> found = Named.of(named, card).map(what -> books.register().stops().get(what));
      if (found.isPresent()) {
        return found.get();
      }
    }
    List<String> stops = List.copyOf(books.register().stops().keySet());
    throw new UsageException(
        "'"
            + named
            + "' was not withdrawn"
            + (stops.isEmpty()
                ? ", and nothing else was"
                : "; what was, is " + NearNames.quoted(stops, " and ")));
  }

  private void refuseAnotherRole(Unit unit, Decisions decisions) throws UsageException {
    List<String> allowed =
        decisions
            .lifts()
            .or(() -> unit.details().lifts().map(each -> each.value().id().slug()))
            .map(List::of)
            .orElseGet(
                () ->
                    new Signers(unit, decisions)
                        .of(SignedKind.ASSET).stream().map(Role::id).map(id -> id.slug()).toList());
    if (!allowed.contains(role)) {
      throw new UsageException(
          "'"
              + role
              + "' does not lift; this unit leaves that to "
              + NearNames.quoted(allowed, " or "));
    }
  }

  /** What must come first, if anything: a generator comes back only with good records. */
  private boolean isTooEarly(CheckedContent judged, Stop stop, Books books) {
    List<OpenItem> first =
        OpenItem.ofRecords(judged.standing().orElseThrow()).stream()
            .filter(
                matter ->
                    stop.isAboutAsset(matter.about().slug())
                        || meant(books, stop)
                            .anyMatch(card -> card.asset().equals(matter.about().slug())))
            .toList();
    if (!first.isEmpty()) {
      OpenItem.told(first)
          .forEach(line -> desk.console().problem("first: " + Printable.of(line).text()));
      desk.console().result("nothing was lifted");
    }
    return !first.isEmpty();
  }
}
