package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stackside.content.NearNames;
import stackside.derive.Analysis;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Editions;
import stackside.derive.edition.Register;
import stackside.derive.signed.Ledger;
import stackside.model.Unit;
import stackside.publish.OutputFolder;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.site.OwnTemplates;
import stackside.render.site.SiteRenderer;

/** Takes cards out of use at once, in one role, whatever state the content is in. */
@Command(
    name = "withdraw",
    description = {
      "Takes a card, or all cards of one generator, out of use at once, with a reason.",
      "The rest of the site stays as it was issued. Only a later issue brings a card back."
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
      names = "--content",
      paramLabel = "FOLDER",
      description = "The folder with the unit's content; '${DEFAULT-VALUE}' if none is named.")
  private Path content = Path.of("content");

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
    if (!Ledger.INITIALS.matcher(initials).matches()) {
      throw new UsageException("'" + initials + "' are no initials; give one to five letters");
    }
    if (reason.isBlank()) {
      throw new UsageException("say why, with --reason");
    }
    Path read = desk.contentFolder(content);
    LocalDate on = day.orElseGet(desk.surroundings().today());
    Path target = desk.outputFolder(out, read);
    try (OutputFolder folder = OutputFolder.hold(desk.surroundings().disk(), target)) {
      SortedMap<String, OutputFile> hanging = folder.files();
      Register before = RegisterFile.in(hanging, out);
      List<CardEntry> chosen = chosen(before);
      Judged judged = Judged.of(read, desk.surroundings().disk(), on);
      Analysis analysis =
          judged
              .analysis()
              .orElseThrow(
                  () ->
                      new UsageException(
                          "unit.yaml cannot be read, so the pages cannot be made; mend it first,"
                              + " or take the cards down and remove "
                              + out));
      refuseUnknownRole(analysis.unit());
      List<CardEntry> down =
          chosen.stream().map(each -> each.outOfUse(reason + " (" + initials + ")")).toList();
      Register after = before.with(on, Optional.of(role), before.ledgerHead(), down);
      folder.replace(files(hanging, after, down, analysis, on));
      folder.notices().forEach(notice -> desk.console().problem("note: " + notice));
      for (CardEntry each : down) {
        desk.console()
            .result(
                "take down: "
                    + each.title()
                    + ", edition "
                    + each.edition()
                    + " of "
                    + each.since()
                    + ": "
                    + each.reason());
      }
    }
    return ExitCode.CLEAN.number();
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
      Analysis analysis,
      LocalDate on) {
    Publication publication =
        new Publication(
            analysis,
            List.of(),
            Faults.all(),
            Marking.ISSUED,
            new Editions(new TreeMap<>(), after),
            on);
    Set<String> inUse =
        after.cards().values().stream()
            .filter(CardEntry::current)
            .map(CardEntry::name)
            .collect(Collectors.toSet());
    List<CardPlan> plans =
        CardPlanner.plans(publication).stream()
            .filter(plan -> inUse.contains(plan.name()))
            .toList();
    Set<String> renewed =
        down.stream()
            .map(each -> "c/" + each.code() + "/index.html")
            .collect(Collectors.toCollection(TreeSet::new));
    renewed.add("cards.html");
    renewed.add("changes.html");
    SortedMap<String, OutputFile> files = new TreeMap<>(hanging);
    down.forEach(each -> files.remove(each.path()));
    SiteRenderer.renderCardPages(publication, plans, OwnTemplates.none()).stream()
        .filter(file -> renewed.contains(file.path()))
        .forEach(file -> files.put(file.path(), file));
    files.put(Register.FILE, OutputFile.text(Register.FILE, after.text()));
    return new ArrayList<>(files.values());
  }
}
