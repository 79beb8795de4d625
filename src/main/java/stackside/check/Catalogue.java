package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * The one list of all rules. The checks, the rule pages and {@code explain} are made from it; a
 * test holds that each rule has its page, its test and its fixtures.
 */
public final class Catalogue {

  private static final List<Rule> RULES =
      List.of(
          // Settings against the machine's description
          new LimitOutsideRange(),
          new LimitOffStep(),
          new LevelUnknown(),
          new SettingIncomplete(),
          new SettingWithoutControl(),
          new ModeOnWrongPedal(),
          new PedalNotOnFootSwitch(),
          new PedalColourUnusual(),
          // Programs
          new ProgramMissing(),
          new SlotOutsidePrograms(),
          new SlotWithTwoContents(),
          new ProgramNotOfSocket(),
          // What is plugged in
          new SocketOfWrongKind(),
          new ModeOfWrongKind(),
          new InstrumentOfWrongKind(),
          new InstrumentCannotReachSocket(),
          new NeutralElectrodeMissing(),
          new ElectrodeNotSplit(),
          new ElectrodeNotForPatients(),
          new ElectrodeDoesNotFit(),
          // Argon
          new ArgonFlowMissing(),
          new ArgonFlowNeedless(),
          new ArgonFlowFarOff(),
          new ArgonCylinderUnchecked(),
          new ArgonDrillMissing(),
          // What rooms keep
          new InstrumentNotKept(),
          new ElectrodeNotKept(),
          new CableNotKept(),
          new SpareNotKept(),
          new SparesPlaceMissing(),
          new FootSwitchMissing(),
          // The machine's description in itself
          new SocketsInOnePlace(),
          new SocketLabelTwice(),
          new PlugNotDescribed(),
          new NeutralSocketMissing(),
          new ModeWithoutPower(),
          new PulseTimesImpossible(),
          new PublishedPointImpossible(),
          new EvidenceFromElsewhere(),
          new AnswerToImpossibleCondition(),
          new AnswerImpossible(),
          new SelectionImpossible(),
          new WaveformMismatch(),
          new ConditionUnanswered(),
          // Voltage and power
          new VoltageAboveRating(),
          new PeakVoltageMissing(),
          new VoltageFallsWithLevel(),
          new SoftModeCanSpark(),
          new CutCannotSpark(),
          new PowerOverFourHundredWatts(),
          new LimitNeverReached(),
          // Classes of lesions, patients and sites
          new SizeClassesOverlap(),
          new SizeClassesLeaveHole(),
          new PatientGroupsOverlap(),
          new PatientGroupsLeaveHole(),
          new SiteNamedTwice(),
          // Answers
          new CoverageGap(),
          new AmbiguousAnswer(),
          new ProfileServesNoRoom(),
          new LesionOfferedTwice(),
          new NotApprovedWithoutAsk(),
          new EvidenceMissing(),
          new AnswerToUnknownQuestion(),
          // What published work would ask
          new ThinWallHigher(),
          new SmallLesionWithCurrent(),
          new SerratedLesionWithCurrent(),
          // Generators and whom to call
          new SoftwareNotDescribed(),
          new SoftwareAgainstServiceLog(),
          new AssetNotFitForUse(),
          new AssetInNoRoom(),
          new AssetInTwoHospitals(),
          new ContactHoursHole(),
          new PhoneUnusable(),
          new PolicyImplausible(),
          new ToleranceWiderThanStandard(),
          new ClinicalAtExampleAddress(),
          // Names and what nothing uses
          new NameTwice(),
          new LookAlikeNames(),
          new NeverUsed(),
          new KindNeverSigned(),
          // Records
          new ReadingCannotBe(),
          new SlotReadTwoWays(),
          new SlotReadInPart(),
          new OutputCheckCannotBe(),
          new UpdateWithoutVersion(),
          new TestLoadOutsideRange(),
          // The circuit
          new SilentOutcomeUnguarded(),
          new SilentOutcomeUnmended(),
          new SignWithoutDrill(),
          new SignWithTwoDrills(),
          new SignNeverShown(),
          new DrillMissesCause(),
          // Drills and checklists
          new LampUnknown(),
          new DrillMendsNothing(),
          new CheckOutOfOrder(),
          new DrillOrderSlow(),
          new TestSparkAdvised(),
          new PowerRaiseAdvised(),
          new PlugMovedUnderPower(),
          new OnePedalUnsaid(),
          new SetUpChecklistMissing(),
          new ChecklistTwice(),
          new GuardWithoutSight(),
          // Figures of the handbook
          new FigureUnknown(),
          new FigureAboutWrong(),
          new FigureWithoutNumbers(),
          new FigureOutOfPlace());

  private Catalogue() {}

  /** Every rule, by subject. */
  public static List<Rule> rules() {
    return RULES;
  }

  /** The fault that a rule of this id finds. */
  public static Optional<Fault> fault(String id) {
    return RULES.stream().map(Rule::fault).filter(fault -> fault.id().equals(id)).findFirst();
  }

  /** The ids of the rules that ask, which a profile may answer under {@code because}. */
  static List<String> questions() {
    return RULES.stream()
        .filter(Question.class::isInstance)
        .map(rule -> rule.fault().id())
        .sorted()
        .toList();
  }

  /** What all rules find, sorted by place, each problem once. */
  public static List<Problem> judge(Analysis analysis) {
    return RULES.parallelStream()
        .flatMap(rule -> rule.problems(analysis).stream())
        .distinct()
        .sorted()
        .toList();
  }
}
