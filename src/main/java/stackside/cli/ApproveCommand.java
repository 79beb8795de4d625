package stackside.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.cli.Option;
import stackside.content.NearNames;
import stackside.derive.edition.Books;
import stackside.derive.edition.Register;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.Decisions;
import stackside.derive.signed.Json;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.Merge;
import stackside.derive.signed.Subjects;
import stackside.model.Initials;
import stackside.model.Role;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.publish.SafeFile;
import stackside.source.Location;
import stackside.source.Problem;

/** Writes what a role has to sign on a sheet, and takes the signatures of whoever has read it. */
final class ApproveCommand implements Command {
  private static final Option ROLE =
      CommandSpec.option("role", "ROLE", "The role that signs, as unit.yaml names it.");
  private static final Option INITIALS =
      CommandSpec.option(
          "initials",
          "INITIALS",
          "The initials of the person who signs; no more of a name is kept.");
  private static final Option ONLY =
      CommandSpec.option(
          "only",
          "THING",
          "A thing to put on the sheet, such as profile:ID, signed already or not; everything that"
              + " is open or due if none is named. May be given more than once.");
  private static final Option SHEET =
      CommandSpec.option(
          "sheet",
          "NUMBER",
          "The number of the sheet that was read, for answering where there is no terminal.");
  private static final Option MERGE =
      CommandSpec.option(
          "merge",
          "LEDGER",
          "Instead of signing, adds the signatures of another copy of approvals.csv that this one"
              + " lacks, with what was kept beside it; for two people who signed at the same time.");
  static final CommandSpec FORM =
      new CommandSpec(
          "approve",
          "Writes what a role has still to sign, or to look at again, on a sheet to be read: what"
              + " each thing says, what changed, warnings, the cards that show it. Then asks group"
              + " by group. Signatures are added to approvals.csv; what they cover is kept in"
              + " approved/.",
          Optional.of(ContentOptions.CONTENT),
          List.of(ContentOptions.ON, ROLE, INITIALS, ONLY, SHEET, MERGE));

  /** So many answers that are none end the sitting. */
  private static final int PATIENCE = 3;

  private final CommandContext desk;
  private final ContentOptions asked;
  private final String role;
  private final String initials;
  private final List<String> only;
  private final Optional<String> sheet;
  private final Optional<Path> merge;

  ApproveCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.asked = ContentOptions.plain(given);
    this.role = given.text(ROLE).orElse("");
    this.initials = given.text(INITIALS).orElse("");
    this.only = given.all(ONLY);
    this.sheet = given.text(SHEET);
    this.merge = given.path(MERGE);
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    Path content = desk.contentFolder(asked);
    ApprovalFiles files = ApprovalFiles.in(desk.surroundings().disk(), content);
    return merge.isPresent() ? merge(merge.get(), files) : sign(files);
  }

  // Merging.

  private ExitCode merge(Path given, ApprovalFiles files) throws IOException, UsageException {
    Path other = desk.path(given);
    if (!Files.isRegularFile(other)) {
      throw new UsageException("there is no file '" + given + "'");
    }
    try (SafeFile held = files.hold()) {
      ApprovalFiles.Read own = files.read();
      if (!own.problems().isEmpty()) {
        return stopped(desk.judged(asked).telling(own.problems()));
      }
      ApprovalFiles.Read theirs = ApprovalFiles.at(desk.surroundings().disk(), other).read();
      List<Problem> problems = theirs.problems().stream().map(each -> in(given, each)).toList();
      if (!problems.isEmpty()) {
        return stopped(desk.judged(asked).telling(problems));
      }
      Merge merged = Merge.of(own.approvals().ledger(), theirs.approvals().ledger());
      if (merged.joined().isEmpty()) {
        return apart(given, merged);
      }
      Approvals after = joined(merged.joined().get(), own.approvals(), theirs.approvals(), given);
      files.write(own.approvals(), after, held);
      int added = merged.added();
      desk.console().result((added == 1 ? "1 line" : added + " lines") + " added from " + given);
    }
    return ExitCode.CLEAN;
  }

  /** A fault of the other ledger stands in the other ledger. */
  private static Problem in(Path given, Problem problem) {
    Location at = problem.at();
    return new Problem(
        problem.fault(),
        new Location(given.toString(), at.line(), at.column(), at.length()),
        problem.message(),
        problem.notes(),
        problem.help());
  }

  private ExitCode apart(Path given, Merge merged) {
    if (merged.apart()) {
      desk.console()
          .problem(
              "stackside: both copies were issued or withdrawn from since they parted; decide which"
                  + " of the two is right, and sign again what only the other had");
    }
    for (Merge.Again each : merged.again()) {
      desk.console()
          .problem(
              "%s:%d: %s was decided in both copies, or before an issue of the other: %s signs it again"
                  .formatted(given, each.line(), each.decision().thing(), each.decision().role()));
    }
    desk.console().result("nothing was added");
    return ExitCode.CONTENT;
  }

  /** Every line needs the copies that it names. */
  private Approvals joined(Ledger ledger, Approvals own, Approvals theirs, Path given)
      throws UsageException {
    SortedMap<String, Json.Members> kept = new TreeMap<>(theirs.kept());
    kept.putAll(own.kept());
    for (Ledger.Line line : ledger.lines()) {
      for (String name : line.entry().names()) {
        if (!kept.containsKey(name)) {
          throw new UsageException(
              "beside '"
                  + given
                  + "' there is no approved/"
                  + name
                  + ".json, which one of its lines names; bring the folder 'approved' along");
        }
      }
    }
    kept.keySet().removeIf(name -> !own.kept().containsKey(name) && !isNamed(ledger, name));
    return new Approvals(ledger, kept);
  }

  private static boolean isNamed(Ledger ledger, String name) {
    return ledger.lines().stream().anyMatch(line -> line.entry().names().contains(name));
  }

  // Signing.

  private ExitCode sign(ApprovalFiles files) throws IOException, UsageException {
    if (!Initials.are(initials)) {
      throw new UsageException(
          "'"
              + initials
              + "' are not initials; give "
              + Initials.FORM_IN_WORDS
              + " with --initials");
    }
    try (SafeFile ledger = files.hold()) {
      CheckedContent judged = desk.judged(asked);
      Approvals approvals = judged.approvals();
      if (judged.analysis().isEmpty() || judged.problems().stream().anyMatch(this::spoils)) {
        return stopped(judged);
      }
      Unit unit = judged.analysis().get().unit();
      LocalDate day = desk.dayOf(asked.on(), new Books(approvals, Register.none()));
      Decisions decisions = approvals.on(day);
      refuseASecondRole(unit, decisions);
      Sitting sitting = new Sitting(judged, decisions, roleOf(unit));
      List<SigningSheet.Item> agreed = sitting.agreed();
      Approvals after = approvals;
      for (SigningSheet.Item item : agreed) {
        after = with(after, day, item, sitting.sheet);
      }
      files.write(approvals, after, ledger);
      desk.console()
          .result(
              agreed.size() + " signed by " + role + " (" + initials + ")" + sitting.left(agreed));
    }
    return ExitCode.CLEAN;
  }

  private Approvals with(
      Approvals approvals, LocalDate day, SigningSheet.Item item, SigningSheet read) {
    Ledger.Decision decision =
        new Ledger.Decision(
            day,
            item.thing(),
            item.facts().map(facts -> facts.fingerprint()),
            read.fingerprint(),
            role,
            initials);
    return item.facts().isPresent()
        ? approvals.with(decision, read.json(), item.facts().get().json())
        : approvals.with(decision, read.json());
  }

  /** A ledger that was touched, or anything unreadable that what is signed may rest on. */
  private boolean spoils(Problem problem) {
    return ErrorScope.isLedger(problem) || ErrorScope.touchesWhatIsSigned(problem);
  }

  private ExitCode stopped(CheckedContent judged) {
    RunResult outcome =
        RunResult.of("approve", desk.day(asked), judged).with(List.of("nothing was signed"));
    desk.close(asked, outcome);
    return ExitCode.CONTENT;
  }

  private Role roleOf(Unit unit) throws UsageException {
    List<Role> roles = unit.details().roles();
    Optional<Role> found = roles.stream().filter(r -> r.id().slug().equals(role)).findFirst();
    if (found.isPresent()) {
      return found.get();
    }
    List<String> names = roles.stream().map(r -> r.id().slug()).toList();
    throw new UsageException(
        "there is no role '"
            + role
            + "'; "
            + NearNames.questionOr(
                "unit.yaml has " + NearNames.quoted(names, " and "), role, names));
  }

  /** Two signatures of one person are one pair of eyes, unless the unit is too small for more. */
  private void refuseASecondRole(Unit unit, Decisions decisions) throws UsageException {
    boolean allowed = decisions.allowsTwoRoles().orElseGet(() -> isAllowedIn(unit));
    Optional<String> other =
        decisions.all().stream()
            .filter(each -> each.initials().equals(initials) && !each.role().equals(role))
            .map(Ledger.Decision::role)
            .findFirst();
    if (!allowed && other.isPresent()) {
      throw new UsageException(
          initials
              + " signed as "
              + other.get()
              + " already, and one person signs in one role; a unit in which it is otherwise says"
              + " 'one-person-two-roles: yes' in unit.yaml");
    }
  }

  private static boolean isAllowedIn(Unit unit) {
    return unit.details().onePersonTwoRoles().map(allowed -> allowed.value()).orElse(false);
  }

  /** One person in front of everything that is open for a role. */
  private final class Sitting {
    private final SigningSheet sheet;
    private final List<ThingId> kept;
    private final BufferedReader answers =
        new BufferedReader(new InputStreamReader(desk.surroundings().in(), StandardCharsets.UTF_8));

    Sitting(CheckedContent judged, Decisions decisions, Role role) throws UsageException {
      Unit unit = judged.analysis().orElseThrow().unit();
      Set<ThingId> wrong = new TreeSet<>();
      Subjects subjects = Subjects.of(unit);
      judged.errors().forEach(each -> subjects.at(each.at()).ifPresent(wrong::add));
      List<SigningSheet.Item> open = SigningSheet.open(judged, role, named(unit, decisions));
      open.stream()
          .map(SigningSheet.Item::thing)
          .filter(thing -> !SigningSheet.isReadable(judged, thing))
          .forEach(wrong::add);
      this.kept = open.stream().map(SigningSheet.Item::thing).filter(wrong::contains).toList();
      this.sheet =
          SigningSheet.of(
              judged,
              decisions,
              role,
              open.stream().filter(item -> !wrong.contains(item.thing())).toList());
    }

    private Set<ThingId> named(Unit unit, Decisions decisions) throws UsageException {
      Set<ThingId> named = new TreeSet<>();
      for (String name : only) {
        named.add(
            ThingId.parse(name)
                .filter(id -> unit.find(id).isPresent() || decisions.about(id).isPresent())
                .orElseThrow(
                    () -> new UsageException("there is no '" + name + "' in the content")));
      }
      return named;
    }

    /** Writes the sheet, then asks whoever can show to have read it. */
    List<SigningSheet.Item> agreed() throws IOException, UsageException {
      Optional<String> read = ApproveCommand.this.sheet;
      if (read.isPresent() && !read.get().equals(sheet.number())) {
        throw new UsageException(
            "what there is to sign is not what stands on sheet "
                + read.get()
                + "; run this again without --sheet and read the new one, "
                + sheet.number());
      }
      if (sheet.size() == 0) {
        return List.of();
      }
      if (read.isEmpty()) {
        show();
      }
      boolean watched = desk.surroundings().terminal() == Environment.Audience.TERMINAL;
      return watched || read.isPresent() ? asked() : List.of();
    }

    private void show() {
      Console console = desk.console();
      console.result("Signing sheet " + sheet.number() + " for " + role);
      sheet.lines().forEach(line -> console.result(Printable.of(line).text()));
      console.result("");
      sheet
          .otherWarnings()
          .forEach(line -> console.result("warning elsewhere: " + Printable.of(line).text()));
    }

    /** One answer for each group. Where the answers end before the groups do, nothing is signed. */
    private List<SigningSheet.Item> asked() throws IOException {
      List<SigningSheet.Item> agreed = new ArrayList<>();
      int number = 0;
      for (SigningSheet.Group group : sheet.groups()) {
        number++;
        switch (answer(sheet.title(number, group))) {
          case YES -> agreed.addAll(group.items());
          case NO -> {}
          case STOP -> {
            return agreed;
          }
          case NOBODY -> {
            return List.of();
          }
        }
      }
      return agreed;
    }

    private Answer answer(String group) throws IOException {
      for (int i = 0; i < PATIENCE; i++) {
        desk.console().asking(group + ". Sign all of it? yes, no or stop: ");
        String line = answers.readLine();
        if (line == null) {
          return Answer.NOBODY;
        }
        switch (line.strip().toLowerCase(Locale.ROOT)) {
          case "y", "yes" -> {
            return Answer.YES;
          }
          case "n", "no" -> {
            return Answer.NO;
          }
          case "stop", "q" -> {
            return Answer.STOP;
          }
          default -> {}
        }
      }
      return Answer.NOBODY;
    }

    String left(List<SigningSheet.Item> agreed) {
      int left = sheet.size() + kept.size() - agreed.size();
      String words = ", " + left + " left open";
      if (!kept.isEmpty()) {
        words +=
            ", of which "
                + kept.size()
                + " not shown because of errors in them, or in what they rest on";
      }
      return agreed.isEmpty() && sheet.size() > 0 && ApproveCommand.this.sheet.isEmpty()
          ? words + "; who has read the sheet can sign it with --sheet " + sheet.number()
          : words;
    }
  }

  /** What somebody answered; nobody did where the answers end or make no sense. */
  private enum Answer {
    YES,
    NO,
    STOP,
    NOBODY
  }
}
