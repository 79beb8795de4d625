package stackside.cli;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stackside.content.Layout;
import stackside.content.ReadingFaults;
import stackside.derive.edition.BookFaults;
import stackside.derive.edition.RecordFaults;
import stackside.derive.signed.LedgerFaults;
import stackside.derive.signed.Subjects;
import stackside.model.Asset;
import stackside.model.Profile;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Face;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;
import stackside.source.Sources;

/**
 * How far one error in the content reaches: which cards must not be made from it. An error that was
 * understood reaches whatever depends on its thing. What could not be read may have been anything
 * that its file holds, so it reaches every card that draws on that file.
 */
sealed interface ErrorScope {

  /** Nothing can be issued, because the error is about something that all share. */
  record Everything() implements ErrorScope {
    @Override
    public boolean touches(CardPlan plan, Set<ThingId> things) {
      return true;
    }
  }

  /** Every card. */
  record AllCards() implements ErrorScope {
    @Override
    public boolean touches(CardPlan plan, Set<ThingId> things) {
      return true;
    }
  }

  /** All cards of one face. */
  record OneFace(Face face) implements ErrorScope {
    @Override
    public boolean touches(CardPlan plan, Set<ThingId> things) {
      return plan.face() == face;
    }
  }

  /**
   * All cards of the machines whose profiles stand in one file: the order of the drills on the
   * set-up face follows from the profiles too.
   */
  record CardsOf(Set<ThingId> machines) implements ErrorScope {
    public CardsOf {
      machines = Set.copyOf(machines);
    }

    @Override
    public boolean touches(CardPlan plan, Set<ThingId> things) {
      return machines.contains(plan.asset().machine().value().id());
    }
  }

  /** The cards that depend on a thing. */
  record Of(ThingId thing) implements ErrorScope {
    @Override
    public boolean touches(CardPlan plan, Set<ThingId> things) {
      return things.contains(thing);
    }
  }

  /** No card at all. */
  record NoCard() implements ErrorScope {
    @Override
    public boolean touches(CardPlan plan, Set<ThingId> things) {
      return false;
    }
  }

  /** Whether a card that depends on these things must not be made. */
  boolean touches(CardPlan plan, Set<ThingId> things);

  /**
   * Whether the content could not be understood there, so that nobody knows whether anything is
   * wrong.
   */
  static boolean isUnread(Problem problem) {
    return ReadingFaults.all().contains(problem.fault());
  }

  /** Whether a card that hangs may still be right: it only must not be replaced. */
  static boolean isDoubt(Problem problem) {
    return isUnread(problem) || RecordFaults.all().contains(problem.fault());
  }

  /** Whether a problem is the ledger's, or lies between it and the register. */
  static boolean isLedger(Problem problem) {
    return LedgerFaults.all().contains(problem.fault())
        || BookFaults.all().contains(problem.fault());
  }

  /**
   * Whether a list that many things draw on could not be read whole, so that none may be signed.
   */
  static boolean touchesWhatIsSigned(Problem problem) {
    String file = problem.at().file();
    return isUnread(problem)
        && problem.severity() == Severity.ERROR
        && (file.startsWith("templates/")
            || (!file.contains("/") && file.endsWith(".yaml") && !file.equals("sources.yaml")));
  }

  static ErrorScope of(Problem problem, Unit unit, Subjects subjects, Sources sources) {
    String file = problem.at().file();
    if (problem.fault().equals(RecordFaults.REMOVED)) {
      // What is gone has no line. The note names the generator that it was about.
      return of(problem.notes().stream().findFirst().flatMap(note -> subjects.at(note.at())));
    }
    if (file.equals("unit.yaml")) {
      return isUnread(problem) ? new Everything() : of(subjects.within(problem.at()));
    }
    return isUnread(problem)
        ? unread(problem.at(), unit, subjects, sources)
        : of(subjects.at(problem.at()));
  }

  private static ErrorScope of(Optional<ThingId> thing) {
    return thing.<ErrorScope>map(Of::new).orElseGet(Everything::new);
  }

  private static ErrorScope unread(Location at, Unit unit, Subjects subjects, Sources sources) {
    String top = at.file().replaceFirst("/.*", "");
    if (top.equals(Layout.TEMPLATES)) {
      return new Everything();
    }
    return Layout.folder(top)
        .map(folder -> unread(folder, at, unit, subjects))
        .or(() -> Layout.single(top).map(single -> unread(single, at, unit, sources)))
        .orElseGet(AllCards::new);
  }

  private static ErrorScope unread(
      Layout.Folder folder, Location at, Unit unit, Subjects subjects) {
    return switch (folder) {
      case HANDBOOK, CHAPTERS, PATHS -> new NoCard();
      case DRILLS, CHECKLISTS -> new OneFace(Face.SET_UP);
      case PROFILES -> profiles(at.file(), unit);
      case MACHINES, ROOMS -> subjects.at(at).<ErrorScope>map(Of::new).orElseGet(AllCards::new);
    };
  }

  private static ErrorScope unread(Layout.Single file, Location at, Unit unit, Sources sources) {
    return switch (file) {
      case SOURCES -> new NoCard();
      case ASSETS, PROGRAM_READINGS, SERVICE_EVENTS, OUTPUT_CHECKS -> row(at, unit, sources);
      case UNIT_DETAILS,
          FOOT_SWITCHES,
          INSTRUMENTS,
          CABLES,
          ELECTRODES,
          SITES,
          LESIONS,
          APPROVALS ->
          new AllCards();
    };
  }

  /** A profile that cannot be read counts as one of the machine whose profiles are around it. */
  private static ErrorScope profiles(String file, Unit unit) {
    Set<ThingId> machines = new TreeSet<>();
    unit.profiles().stream()
        .filter(profile -> profile.at().file().equals(file))
        .map(Profile::machine)
        .forEach(machine -> machines.add(machine.value().id()));
    return machines.isEmpty() ? new AllCards() : new CardsOf(machines);
  }

  /**
   * A row that begins with the number of a generator is about that generator, whatever else it
   * says.
   */
  private static ErrorScope row(Location at, Unit unit, Sources sources) {
    String number = sources.excerpt(at).map(row -> row.replaceFirst(",.*", "")).orElse("");
    return unit.assets().stream()
        .map(Asset::id)
        .filter(asset -> asset.slug().equals(number))
        .findFirst()
        .<ErrorScope>map(Of::new)
        .orElseGet(AllCards::new);
  }
}
