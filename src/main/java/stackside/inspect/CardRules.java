package stackside.inspect;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.check.Catalogue;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.CardFaults;
import stackside.render.plan.CardPlan;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * The one list of all rules about cards, subject by subject. Some judge the plan, which knows where
 * in the content its words come from; the others judge the finished PDF.
 */
public final class CardRules {

  private static final Catalogue<InspectedCard> PLANNED =
      Catalogue.of(StepRules.rules(), WordRules.rules());

  private static final Catalogue<InspectedCard> PRINTED =
      Catalogue.of(
          LayoutRules.rules(),
          LetterRules.rules(),
          ColourRules.rules(),
          TableRules.rules(),
          IdentityRules.rules(),
          PrintingRules.rules());

  private static final Catalogue<InspectedCard> CATALOGUE = PLANNED.with(PRINTED);

  private CardRules() {}

  /** Every rule about cards, those about the plan first. */
  public static Catalogue<InspectedCard> catalogue() {
    return CATALOGUE;
  }

  /** Every kind of mistake that making or judging a card can find. */
  public static List<Fault> faults() {
    return Stream.concat(CATALOGUE.faults().stream(), CardFaults.all().stream()).toList();
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
    return (seen.containsKey(plan.path()) ? CATALOGUE : PLANNED).problems(card);
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
