package stackside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.cli.Option;
import stackside.content.NearNames;
import stackside.derive.edition.Books;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;
import stackside.derive.edition.Stop;
import stackside.derive.signed.Approvals;
import stackside.model.Initials;
import stackside.publish.OutputFolder;
import stackside.publish.SafeFile;

/**
 * Takes cards out of use at once, in one role. It needs nothing but the issued site folder: the
 * content may be broken, half edited or out of reach.
 */
final class WithdrawCommand implements Command {
  private static final CommandSpec.Place CARD =
      new CommandSpec.Place(
          "CARD",
          true,
          "A card by its name, by the code on it or by the address that was scanned, or"
              + " asset:NUMBER.");
  private static final Option REASON =
      CommandSpec.required("reason", "WORDS", "Why, in words for everybody.");
  private static final Option ROLE =
      CommandSpec.required("role", "ROLE", "The role that withdraws.");
  private static final Option INITIALS =
      CommandSpec.required("initials", "INITIALS", "The initials of the person.");
  private static final Option OUT =
      CommandSpec.option("out", "FOLDER", "The issued site folder; 'site' if none is named.");
  private static final Option CONTENT =
      CommandSpec.option(
          "content",
          "FOLDER",
          "The content, whose ledger learns of it if it is at hand; 'content' if none is named.");
  static final CommandSpec FORM =
      new CommandSpec(
          "withdraw",
          "Takes a card, or all cards of one generator, out of use at once, with a reason. It needs"
              + " the issued site folder and nothing else; the rest of the site stays as it was"
              + " issued. It stands through every issue, until 'lift' ends it.",
          Optional.of(CARD),
          List.of(REASON, ROLE, INITIALS, OUT, CONTENT, ContentOptions.ON));

  private final CommandContext desk;
  private final String card;
  private final String reason;
  private final String role;
  private final String initials;
  private final Path out;
  private final Path content;
  private final Optional<LocalDate> on;

  WithdrawCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.card = given.place().orElseThrow();
    this.reason = given.text(REASON).orElseThrow();
    this.role = given.text(ROLE).orElseThrow();
    this.initials = given.text(INITIALS).orElseThrow();
    this.out = given.path(OUT).orElse(Path.of("site"));
    this.content = given.path(CONTENT).orElse(Path.of("content"));
    this.on = given.day(ContentOptions.ON);
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    if (!Initials.are(initials)) {
      throw new UsageException(
          "'" + initials + "' are not initials; give " + Initials.FORM_IN_WORDS);
    }
    if (reason.isBlank()) {
      throw new UsageException("say why, with --reason");
    }
    ApprovalFiles files =
        ApprovalFiles.in(desk.surroundings().disk(), desk.path(content).toAbsolutePath());
    try (OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), desk.path(out));
        Alongside ledger = Alongside.of(files, desk.path(content))) {
      IssuedSite site = IssuedSite.in(folder, out);
      Books alone = new Books(Approvals.none(), site.register());
      Books both = new Books(ledger.approvals(), site.register());
      boolean together = ledger.isThere() && both.problems().isEmpty();
      Books before = together ? both.adopted() : alone;
      LocalDate day = day(before);
      String what = what(site.register());
      site.refuseUnknownRole(role);
      Stop stop = new Stop(what, reason + " (" + initials + ")", Optional.of(role), day);
      List<CardEntry> down =
          current(site.register())
              .filter(each -> isMeant(what, each))
              .map(each -> each.outOfUse(stop.why()))
              .toList();
      RegisterEntry entry = before.withdrawal(day, role, down, stop);
      IssuedSite.After after = site.after(entry, down, day);
      folder.replace(after.files());
      folder.notices().forEach(notice -> desk.console().problem("note: " + notice));
      site.notes().forEach(note -> desk.console().problem("note: " + note));
      down.forEach(this::tell);
      if (together) {
        ledger.write(files, both.approvals(), before.with(after.entry(), initials).approvals());
      }
      desk.console()
          .result(
              "open: "
                  + out.resolve("cards.html")
                  + "; it stays out of use through every issue until 'lift' ends it");
      if (!together) {
        desk.console()
            .problem(
                "note: the ledger was not at hand, so only this folder knows of it; keep it until"
                    + " the next issue");
      }
    }
    return ExitCode.CLEAN;
  }

  /** A clock that runs behind does not keep anybody from taking a card down. */
  private LocalDate day(Books books) throws UsageException {
    LocalDate today = desk.surroundings().today().get();
    if (on.isPresent()) {
      return desk.dayOf(on, books);
    }
    return Stream.concat(
            books.register().last().map(RegisterEntry::on).stream(),
            books.ledger().lastDay().stream())
        .filter(today::isBefore)
        .max(LocalDate::compareTo)
        .orElse(today);
  }

  private void tell(CardEntry each) {
    desk.console()
        .result(Printable.of("take down: " + IssueLists.taken(each) + ": " + each.reason()).text());
  }

  private static Stream<CardEntry> current(Register register) {
    return register.cards().values().stream().filter(CardEntry::current);
  }

  /** What was named, as a stop names it. */
  private String what(Register register) throws UsageException {
    Optional<String> meant =
        current(register).flatMap(each -> Named.of(card, each).stream()).findFirst();
    if (meant.isPresent()) {
      return meant.get();
    }
    Optional<String> down =
        register.cards().values().stream()
            .flatMap(each -> Named.of(card, each).stream())
            .findFirst();
    List<String> near = NearNames.of(card, current(register).map(CardEntry::name).toList());
    throw new UsageException(
        down.map(what -> what + " is out of use already; nothing was changed")
            .orElseGet(
                () ->
                    "no card in use is '"
                        + card
                        + "'"
                        + (near.isEmpty() ? "" : "; " + NearNames.question(near))));
  }

  private static boolean isMeant(String what, CardEntry each) {
    return what.equals(Stop.asset(each.asset())) || what.equals(Stop.card(each.name()));
  }

  /** The ledger, if it lies at hand whole and nobody else is at work on it. */
  private record Alongside(Approvals approvals, Optional<SafeFile> held) implements AutoCloseable {

    static Alongside of(ApprovalFiles files, Path content) {
      Optional<SafeFile> held = Optional.empty();
      try {
        if (Files.isDirectory(content)) {
          held = Optional.of(files.hold());
          ApprovalFiles.Read read = files.read();
          if (read.problems().isEmpty() && !read.approvals().ledger().lines().isEmpty()) {
            return new Alongside(read.approvals(), held);
          }
          held.get().close();
        }
      } catch (IOException e) {
        // Whatever is the matter with the ledger, the card comes down.
      }
      return new Alongside(Approvals.none(), Optional.empty());
    }

    boolean isThere() {
      return held.isPresent();
    }

    void write(ApprovalFiles files, Approvals before, Approvals after) throws IOException {
      files.write(before, after, held.orElseThrow());
    }

    @Override
    public void close() throws IOException {
      if (held.isPresent()) {
        held.get().close();
      }
    }
  }
}
