package stackside.seeded;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.SignedFacts;
import stackside.derive.standing.OutputCheckStanding;
import stackside.derive.standing.SignatureStanding;
import stackside.derive.standing.Standing;
import stackside.model.Unit;
import stackside.render.Marking;
import stackside.render.Publication;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.render.plan.Phrase;
import stackside.source.Problem;

/**
 * What people act on, regardless of where it is written or how things are sorted: what is signed;
 * what every card says, where it sends the reader and how large its letters are; and the state of
 * signatures, stored programs and output checks on a given day.
 */
record ActedOn(Map<String, String> signed, List<String> cards, List<String> standing) {
  static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  static ActedOn of(Unit unit) {
    return new ActedOn(signed(unit), cards(unit), standing(unit));
  }

  /** Which of the three differ. */
  Stream<String> differing(ActedOn other) {
    return Stream.of(
            signed.equals(other.signed) ? "" : "what is signed",
            cards.equals(other.cards) ? "" : "what the cards say",
            standing.equals(other.standing) ? "" : "where the unit stands")
        .filter(words -> !words.isEmpty());
  }

  private static Map<String, String> signed(Unit unit) {
    return SignedFacts.allOf(unit)
        .collect(
            Collectors.toMap(
                each -> each.thing().toString(),
                each -> each.fingerprint().toString(),
                (a, b) -> a,
                TreeMap::new));
  }

  private static List<String> cards(Unit unit) {
    Publication draft =
        new Publication(Analysis.of(unit), List.<Problem>of(), List.of(), Marking.DRAFT, DAY);
    String distances =
        Stream.of(unit.details().readingDistance().near(), unit.details().readingDistance().far())
            .map(distance -> distance.value().text())
            .collect(Collectors.joining(" "));
    return CardPlanner.plans(draft).stream()
        .sorted(Comparator.comparing(CardPlan::name))
        .map(plan -> said(plan) + " from " + distances)
        .toList();
  }

  private static String said(CardPlan plan) {
    return plan.phrases()
        .map(Phrase::words)
        .collect(Collectors.joining(" | ", plan.name() + ": ", plan.fingerprint() + plan.held()));
  }

  /** The state of everything that is signed, stored in a machine or measured, without due dates. */
  static List<String> standing(Unit unit) {
    Standing on = Standing.of(unit, Approvals.none(), DAY);
    return Stream.of(
            on.signatures().stream().map(ActedOn::signature),
            on.programs().all().stream()
                .map(
                    each ->
                        each.asset().id()
                            + " "
                            + each.profile().id()
                            + " "
                            + each.verdict()
                            + " "
                            + each.mismatches().stream()
                                .map(it -> it.field() + " " + it.pedal() + " " + it.read())
                                .toList()),
            on.outputChecks().stream().map(ActedOn::outputCheck))
        .flatMap(each -> each)
        .sorted()
        .toList();
  }

  private static String signature(SignatureStanding each) {
    return each.thing().id() + " " + each.state() + " " + each.missing().size();
  }

  private static String outputCheck(OutputCheckStanding each) {
    return each.asset().id() + " " + each.mode().id() + " " + each.state();
  }
}
