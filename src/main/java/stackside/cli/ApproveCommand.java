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
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.cli.Option;
import stackside.content.NearNames;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.FactChange;
import stackside.derive.signed.FactWords;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.SignedFacts;
import stackside.derive.signed.Subjects;
import stackside.model.Initials;
import stackside.model.Role;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.publish.SafeFile;
import stackside.source.Problem;
import stackside.source.Severity;

/** Shows what a role would sign, thing by thing, and adds the signatures that are given. */
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
          "A thing to show, such as profile:ID; everything that is open if none is named. May be"
              + " given more than once.");
  private static final Option MERGE =
      CommandSpec.option(
          "merge",
          "LEDGER",
          "Instead of signing, adds the signatures of another copy of approvals.csv that this one"
              + " lacks, in its order and sealed anew; for two people who signed at the same time.");
  static final CommandSpec FORM =
      ContentOptions.form(
          "approve",
          "Shows each thing that a role has still to sign, with what changed since it was last"
              + " signed, and asks. Signatures are added to approvals.csv; what they cover is kept in"
              + " approved/.",
          ROLE,
          INITIALS,
          ONLY,
          MERGE);

  private final CommandContext desk;
  private final ContentOptions asked;
  private final String role;
  private final String initials;
  private final List<String> only;
  private final Optional<Path> merge;

  ApproveCommand(CommandContext desk, Arguments given) throws UsageException {
    this.desk = desk;
    this.asked = ContentOptions.of(given);
    this.role = given.text(ROLE).orElse("");
    this.initials = given.text(INITIALS).orElse("");
    this.only = given.all(ONLY);
    this.merge = given.path(MERGE);
  }

  @Override
  public ExitCode run() throws IOException, UsageException {
    Path content = desk.contentFolder(asked);
    ApprovalFiles files = new ApprovalFiles(desk.surroundings().disk(), content);
    return merge.isPresent() ? merge(merge.get(), files) : sign(files);
  }

  /** Both ledgers must be whole; the kept copies have no order and merge by being copied. */
  private ExitCode merge(Path given, ApprovalFiles files) throws IOException, UsageException {
    Path other = desk.path(given);
    if (!Files.isRegularFile(other)) {
      throw new UsageException("there is no file '" + given + "'");
    }
    try (SafeFile ledger = files.holdLedger()) {
      Ledger.Read own = files.read().ledger();
      Ledger.Read theirs = files.ledger(other);
      if (!own.problems().isEmpty() || !theirs.problems().isEmpty()) {
        List<Problem> problems = own.problems().isEmpty() ? theirs.problems() : own.problems();
        return stopped(desk.judged(asked).with(problems));
      }
      Ledger merged = own.ledger().merged(theirs.ledger());
      int added = merged.lines().size() - own.ledger().lines().size();
      if (added > 0) {
        ledger.replace(merged.text().getBytes(StandardCharsets.UTF_8));
      }
      desk.console().result(added + " signatures added from " + given);
    }
    return ExitCode.CLEAN;
  }

  private ExitCode sign(ApprovalFiles files) throws IOException, UsageException {
    if (!Initials.are(initials)) {
      throw new UsageException(
          "'"
              + initials
              + "' are not initials; give "
              + Initials.FORM_IN_WORDS
              + " with --initials");
    }
    try (SafeFile ledger = files.holdLedger()) {
      CheckedContent judged = desk.judged(asked);
      ApprovalFiles.Read read = files.read();
      if (judged.analysis().isEmpty()
          || !read.problems().isEmpty()
          || judged.problems().stream().anyMatch(ErrorScope::touchesWhatIsSigned)) {
        return stopped(judged.with(read.problems()));
      }
      Unit unit = judged.analysis().get().unit();
      Sitting sitting = new Sitting(unit, roleOf(unit), read.approvals(), judged);
      List<SignedFacts> agreed = sitting.agreed();
      if (!agreed.isEmpty()) {
        write(agreed, read.approvals().ledger(), files, ledger);
      }
      desk.console()
          .result(
              agreed.size() + " signed by " + role + " (" + initials + ")" + sitting.left(agreed));
    }
    return ExitCode.CLEAN;
  }

  private ExitCode stopped(CheckedContent judged) {
    RunResult outcome =
        RunResult.of("approve", desk.day(asked), judged).with(List.of("nothing was signed"));
    return desk.close(asked, outcome);
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

  private void write(List<SignedFacts> agreed, Ledger before, ApprovalFiles files, SafeFile file)
      throws IOException {
    LocalDate day = desk.day(asked);
    Ledger ledger = before;
    for (SignedFacts facts : agreed) {
      files.keep(facts);
      ledger =
          ledger.with(new Ledger.Entry(day, facts.thing(), facts.fingerprint(), role, initials));
    }
    file.replace(ledger.text().getBytes(StandardCharsets.UTF_8));
  }

  /** One person in front of everything that is open for a role. */
  private final class Sitting {
    private final Unit unit;
    private final Approvals approvals;
    private final List<SignedFacts> open;
    private final Set<ThingId> wrong = new TreeSet<>();
    private final BufferedReader answers =
        new BufferedReader(new InputStreamReader(desk.surroundings().in(), StandardCharsets.UTF_8));

    Sitting(Unit unit, Role role, Approvals approvals, CheckedContent judged)
        throws UsageException {
      this.unit = unit;
      this.approvals = approvals;
      this.open = approvals.toSign(unit, role).stream().filter(this::isAsked).toList();
      Subjects subjects = Subjects.of(unit);
      for (Problem problem : judged.problems()) {
        if (problem.severity() == Severity.ERROR) {
          subjects.at(problem.at()).ifPresent(wrong::add);
        }
      }
      for (String name : only) {
        if (ThingId.parse(name).flatMap(unit::find).isEmpty()) {
          throw new UsageException("there is no '" + name + "' in the content");
        }
      }
    }

    private boolean isAsked(SignedFacts facts) {
      return only.isEmpty() || only.contains(facts.thing().toString());
    }

    /** Shows one after the other; nothing is signed that was not shown. */
    List<SignedFacts> agreed() throws IOException {
      List<SignedFacts> agreed = new ArrayList<>();
      for (SignedFacts facts : open) {
        if (wrong.contains(facts.thing())) {
          continue;
        }
        show(facts);
        Optional<Boolean> answer = answer();
        if (answer.isEmpty()) {
          break;
        }
        if (answer.get()) {
          agreed.add(facts);
        }
      }
      return agreed;
    }

    private void show(SignedFacts facts) {
      Console console = desk.console();
      console.result("");
      console.result(
          facts.thing()
              + ": "
              + Approvals.thing(unit, facts).title()
              + ", "
              + facts.fingerprint().shortText());
      Optional<Approvals.SinceSigned> since = approvals.sinceSigned(facts);
      if (since.isPresent()) {
        Ledger.Entry last = since.get().entry();
        console.result(
            "  last signed by " + last.role() + " (" + last.initials() + ") on " + last.date());
        lines(since.get().changes().stream().map(FactChange::words), "changed: ");
      } else {
        console.result("  never signed before");
      }
      lines(FactWords.lines(facts.facts()).stream(), "");
    }

    private void lines(Stream<String> lines, String prefix) {
      lines.forEach(line -> desk.console().result("  " + prefix + Printable.of(line).text()));
    }

    /** Yes, no, or the end of the sitting. */
    private Optional<Boolean> answer() throws IOException {
      while (true) {
        desk.console().asking("Sign this? yes, no or stop: ");
        String line = answers.readLine();
        if (line == null) {
          return Optional.empty();
        }
        switch (line.strip().toLowerCase(Locale.ROOT)) {
          case "y", "yes" -> {
            return Optional.of(true);
          }
          case "n", "no" -> {
            return Optional.of(false);
          }
          case "stop", "q" -> {
            return Optional.empty();
          }
          default -> {}
        }
      }
    }

    String left(List<SignedFacts> agreed) {
      int left = open.size() - agreed.size();
      long kept = open.stream().filter(facts -> wrong.contains(facts.thing())).count();
      return ", "
          + left
          + " left open"
          + (kept == 0 ? "" : ", of which " + kept + " not shown because of errors in them");
    }
  }
}
