package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.cli.Option;
import stackside.content.NearNames;
import stackside.derive.Analysis;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Editions;
import stackside.derive.edition.Register;
import stackside.model.Initials;
import stackside.model.Unit;
import stackside.publish.OutputFolder;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.site.SiteRenderer;

/**
 * Takes cards out of use at once, in one role. It needs nothing but the issued site folder: the
 * content may be broken, half edited or out of reach.
 */
final class WithdrawCommand implements Command {
  private static final String ASSET = "asset:";
  private static final CommandSpec.Place CARD =
      new CommandSpec.Place(
          "CARD", true, "A card by its name or by the code on it, or asset:NUMBER.");
  private static final Option REASON =
      CommandSpec.required("reason", "WORDS", "Why, in words for everybody.");
  private static final Option ROLE =
      CommandSpec.required("role", "ROLE", "The role that withdraws.");
  private static final Option INITIALS =
      CommandSpec.required("initials", "INITIALS", "The initials of the person.");
  private static final Option OUT =
      CommandSpec.option("out", "FOLDER", "The issued site folder; 'site' if none is named.");
  static final CommandSpec FORM =
      new CommandSpec(
          "withdraw",
          "Takes a card, or all cards of one generator, out of use at once, with a reason. It needs"
              + " the issued site folder and nothing else; the rest of the site stays as it was"
              + " issued. Only a later issue brings a card back.",
          Optional.of(CARD),
          List.of(REASON, ROLE, INITIALS, OUT, ContentOptions.ON));

  private final CommandContext desk;
  private final String card;
  private final String reason;
  private final String role;
  private final String initials;
  private final Path out;
  private final LocalDate on;

  WithdrawCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.card = given.place().orElseThrow();
    this.reason = given.text(REASON).orElseThrow();
    this.role = given.text(ROLE).orElseThrow();
    this.initials = given.text(INITIALS).orElseThrow();
    this.out = given.path(OUT).orElse(Path.of("site"));
    this.on = given.day(ContentOptions.ON).orElseGet(desk.surroundings().today());
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
    try (OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), desk.path(out))) {
      SortedMap<String, OutputFile> hanging = folder.files();
      Register before = RegisterFile.in(hanging, out);
      List<CardEntry> chosen = chosen(before);
      Unit unit = KeptUnit.in(hanging);
      refuseUnknownRole(unit);
      List<CardEntry> down =
          chosen.stream().map(each -> each.outOfUse(reason + " (" + initials + ")")).toList();
      Register after = before.with(on, Optional.of(role), before.ledgerHead(), down, List.of());
      folder.replace(files(hanging, after, down, unit, on));
      folder.notices().forEach(notice -> desk.console().problem("note: " + notice));
      down.forEach(this::tell);
      desk.console()
          .result(
              "open: " + out.resolve("cards.html") + "; only a later 'issue' brings a card back");
    }
    return ExitCode.CLEAN;
  }

  private void tell(CardEntry card) {
    desk.console()
        .result(Printable.of("take down: " + IssueLists.taken(card) + ": " + card.reason()).text());
  }

  private List<CardEntry> chosen(Register register) throws UsageException {
    List<CardEntry> current =
        register.cards().values().stream().filter(CardEntry::current).toList();
    List<CardEntry> chosen = current.stream().filter(this::isMeant).toList();
    if (chosen.isEmpty()) {
      List<String> near = NearNames.of(card, current.stream().map(CardEntry::name).toList());
      throw new UsageException(
          "no card in use is '"
              + card
              + "'"
              + (near.isEmpty() ? "" : "; " + NearNames.question(near)));
    }
    return chosen;
  }

  private boolean isMeant(CardEntry each) {
    return each.name().equals(card)
        || each.code().equals(card)
        || (ASSET + each.asset()).equals(card);
  }

  private void refuseUnknownRole(Unit unit) throws UsageException {
    List<String> roles = unit.details().roles().stream().map(r -> r.id().slug()).toList();
    if (!roles.contains(role)) {
      throw new UsageException(
          "there is no role '" + role + "'; unit.yaml has " + NearNames.quoted(roles, " and "));
    }
  }

  /** The site as it stands, with new pages about cards and without the withdrawn files. */
  private static List<OutputFile> files(
      SortedMap<String, OutputFile> hanging,
      Register after,
      List<CardEntry> down,
      Unit unit,
      LocalDate on) {
    Publication publication =
        new Publication(
            Analysis.of(unit),
            List.of(),
            List.of(),
            Marking.ISSUED,
            new Editions(new TreeMap<>(), after),
            on);
    SortedMap<String, OutputFile> files = new TreeMap<>(hanging);
    down.forEach(each -> files.remove(each.path()));
    SiteRenderer.renderAfterWithdrawal(publication, List.copyOf(files.values()), down)
        .forEach(file -> files.put(file.path(), file));
    files.put(Register.FILE, OutputFile.text(Register.FILE, after.text()));
    return new ArrayList<>(files.values());
  }
}
