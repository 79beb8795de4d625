package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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
import stackside.render.site.OwnTemplates;
import stackside.render.site.SiteRenderer;

/**
 * Takes cards out of use at once, in one role. It needs nothing but the issued site folder: the
 * content may be broken, half edited or out of reach.
 */
@Command(
    name = "withdraw",
    description = {
      "Takes a card, or all cards of one generator, out of use at once, with a reason.",
      "It needs the issued site folder and nothing else; the rest of the site stays as it was",
      "issued. Only a later issue brings a card back."
    })
final class WithdrawCommand implements Callable<Integer> {
  private static final String ASSET = "asset:";

  private final Desk desk;

  @Parameters(
      index = "0",
      paramLabel = "CARD",
      description = "A card by its name or by the code on it, or asset:NUMBER.")
  private String card = "";

  @Option(names = "--reason", required = true, description = "Why, in words for everybody.")
  private String reason = "";

  @Option(names = "--role", required = true, description = "The role that withdraws.")
  private String role = "";

  @Option(names = "--initials", required = true, description = "The initials of the person.")
  private String initials = "";

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "The issued site folder; '${DEFAULT-VALUE}' if none is named.")
  private Path out = Path.of("site");

  @Option(
      names = "--templates",
      paramLabel = "FOLDER",
      description = "Templates of the unit's own, if the site was issued with some.")
  private Optional<Path> templates = Optional.empty();

  @Option(
      names = "--on",
      paramLabel = "YYYY-MM-DD",
      converter = Asked.Day.class,
      description = "The day to work for; today if none is given.")
  private Optional<LocalDate> day = Optional.empty();

  WithdrawCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException, UsageException {
    if (!Initials.are(initials)) {
      throw new UsageException(
          "'" + initials + "' are no initials; give " + Initials.FORM_IN_WORDS);
    }
    if (reason.isBlank()) {
      throw new UsageException("say why, with --reason");
    }
    OwnTemplates own = desk.templates(templates);
    LocalDate on = day.orElseGet(desk.surroundings().today());
    try (OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), desk.path(out))) {
      SortedMap<String, OutputFile> hanging = folder.files();
      Register before = RegisterFile.in(hanging, out);
      List<CardEntry> chosen = chosen(before);
      Unit unit = KeptUnit.in(hanging);
      refuseUnknownRole(unit);
      List<CardEntry> down =
          chosen.stream().map(each -> each.outOfUse(reason + " (" + initials + ")")).toList();
      Register after = before.with(on, Optional.of(role), before.ledgerHead(), down, List.of());
      folder.replace(files(hanging, after, down, unit, own, on));
      folder.notices().forEach(notice -> desk.console().problem("note: " + notice));
      down.forEach(this::tell);
      desk.console()
          .result(
              "open: " + out.resolve("cards.html") + "; only a later 'issue' brings a card back");
    }
    return ExitCode.CLEAN.number();
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
      OwnTemplates own,
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
    SiteRenderer.renderAfterWithdrawal(publication, List.copyOf(files.values()), down, own)
        .forEach(file -> files.put(file.path(), file));
    files.put(Register.FILE, OutputFile.text(Register.FILE, after.text()));
    return new ArrayList<>(files.values());
  }
}
