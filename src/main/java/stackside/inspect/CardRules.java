package stackside.inspect;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardFaults;
import stackside.render.plan.CardPlan;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * The one list of all rules about cards. Word rules judge the plan, which knows where in the
 * content its words come from; the others judge the finished PDF.
 */
public final class CardRules {

  private static final List<CardRule> WORDS =
      List.of(
          new MakeSafeMissing(),
          new MakeSafeTooLong(),
          new CapitalsInRow(),
          new NumberBadlyWritten(),
          new BannedTokenOnCard(),
          new StepWithoutVerb(),
          new StepWithTwoActions(),
          new StepTooLong(),
          new StepLong(),
          new TooManySteps(),
          new ManySteps(),
          new TooManyDrillsOnCard(),
          new DrillWithoutSign(),
          new DrillBranches(),
          new AnswerMissingFromCard(),
          new TooManyRows(),
          new NamesAlike());

  private static final List<CardRule> PAGES =
      List.of(
          new CardNotOnePage(),
          new WordsOverlap(),
          new InkOutsideMargin(),
          new WordsNearEdge(),
          new NearLettersTooLow(),
          new FarLettersTooLow(),
          new SmallLettersTooLow(),
          new TypeTooSmall(),
          new LinesTooClose(),
          new LineTooLong(),
          new ValueFarFromLabel(),
          new SlantedOrTurnedWords(),
          new FontNotEmbedded(),
          new TextContrastTooLow(),
          new LongReversedText(),
          new SwatchWithoutOutline(),
          new ColourWithoutWord(),
          new FillsAlikeInGrey(),
          new ColourOutOfPlace(),
          new EmptyCell(),
          new RowNotAsApproved(),
          new RefusalLikeSetting(),
          new IdentityIncomplete(),
          new ContactNotOnCard(),
          new FixedPartMoved(),
          new CodeUnreadable(),
          new FigureWithoutWords(),
          new CardCrowded());

  private CardRules() {}

  /** Every rule about cards, words first. */
  public static List<CardRule> rules() {
    return Stream.concat(WORDS.stream(), PAGES.stream()).toList();
  }

  /** Every kind of mistake that making or judging a card can find. */
  public static List<Fault> faults() {
    return Stream.concat(rules().stream().map(CardRule::fault), CardFaults.all().stream()).toList();
  }

  /**
   * Judges an edition's cards.
   *
   * @param plans all plans of the edition
   * @param files the finished cards; a plan whose card could not be printed has none here
   * @return what is wrong, sorted, each once
   */
  public static List<Problem> judge(
      Publication publication, List<CardPlan> plans, List<OutputFile> files) {
    Map<String, Inspection> seen = new TreeMap<>();
    files.parallelStream().map(Inspection::of).forEachOrdered(each -> seen.put(each.path(), each));
    return plans.parallelStream()
        .flatMap(plan -> problems(publication, plan, plans, seen))
        .distinct()
        .sorted()
        .toList();
  }

  private static Stream<Problem> problems(
      Publication publication, CardPlan plan, List<CardPlan> plans, Map<String, Inspection> seen) {
    Inspection own = seen.getOrDefault(plan.path(), Inspection.nothing(plan.path()));
    InspectedCard card = new InspectedCard(publication, plan, own, fellows(plan, plans, seen));
    List<CardRule> rules = seen.containsKey(plan.path()) ? rules() : WORDS;
    return rules.stream().flatMap(rule -> rule.problems(card).stream());
  }

  private static List<Inspection> fellows(
      CardPlan plan, List<CardPlan> plans, Map<String, Inspection> seen) {
    return plans.stream()
        .filter(other -> sameLocation(plan, other) && seen.containsKey(other.path()))
        .map(other -> seen.get(other.path()))
        .toList();
  }

  private static boolean sameLocation(CardPlan one, CardPlan other) {
    return one.room().location().value().id().equals(other.room().location().value().id());
  }
}
