package stackside.derive.signed;

import java.util.Comparator;
import stackside.model.Asset;
import stackside.model.Citation;
import stackside.model.Messages;
import stackside.model.OutputCheckPolicy;
import stackside.model.Role;
import stackside.model.Unit;
import stackside.model.UnitDetails;

/**
 * What signatures under the unit as a whole cover: its policies, the list of its sources, and each
 * generator as it stands in the list of assets.
 */
final class UnitFacts {
  private static final Comparator<Json.Members> BY_ID =
      Comparator.comparing(members -> members.text("id").orElse(""));

  private UnitFacts() {}

  /**
   * All that {@code unit.yaml} says for the whole unit and no room, profile or card signs, and the
   * unit's own words for what every card says.
   */
  static FactList policies(Unit whole) {
    UnitDetails unit = whole.details();
    FactList cardWords = new FactList();
    whole.ownWords().entrySet().stream()
        .filter(own -> Messages.reachCards(own.getKey()))
        .forEach(own -> cardWords.text(own.getKey(), own.getValue()));
    FactList signatures = new FactList();
    unit.signatures().forEach((kind, roles) -> signatures.ids(kind.word(), roles));
    FactList reviews = new FactList();
    unit.reviewAfter().forEach((kind, every) -> reviews.quantity(kind.word(), every));
    FactList words = new FactList();
    unit.words().forEach((term, word) -> words.text(term.word(), word));
    FactList alarms = new FactList();
    unit.stopOrWarn().forEach((alarm, answer) -> alarms.word(alarm.word(), answer));
    FactList distances =
        new FactList()
            .quantity("near", unit.readingDistance().near())
            .quantity("far", unit.readingDistance().far());
    return new FactList()
        .text("name", unit.name())
        .word("status", unit.status())
        .text("language", unit.language())
        .text("address", unit.address().value().toString())
        .members("reading-distance", distances)
        .list("roles", unit.roles().stream().map(UnitFacts::named).sorted(BY_ID).toList())
        .members("signatures", signatures)
        .members("review-after", reviews)
        .members("output-check", of(unit.outputCheck()))
        .members("stop-or-warn", alarms)
        .ids("lifts", unit.lifts().stream().toList())
        .flag("one-person-two-roles", unit.onePersonTwoRoles())
        .members("words", words)
        .members("card-words", cardWords)
        .list("verbs", unit.verbs().stream().map(verb -> Json.text(verb.value())).toList());
  }

  private static FactList of(OutputCheckPolicy policy) {
    return new FactList()
        .quantity("tolerance", policy.tolerance())
        .text("above", policy.above().value().text())
        .quantity("every", policy.every());
  }

  private static Json.Members named(Role role) {
    return new FactList().text("id", role.id().slug()).text("name", role.name()).json();
  }

  static FactList sources(Unit unit) {
    return new FactList()
        .list("sources", unit.citations().stream().map(UnitFacts::of).sorted(BY_ID).toList());
  }

  private static Json.Members of(Citation citation) {
    return new FactList()
        .text("id", citation.id().slug())
        .text("by", citation.by())
        .text("title", citation.work())
        .number("year", citation.year())
        .text("in", citation.in())
        .word("basis", citation.basis())
        .json();
  }

  static FactList of(Asset asset) {
    return new FactList()
        .text("machine", asset.machine().value().id().slug())
        .text("software", asset.software())
        .word("status", asset.status())
        .text("since", asset.since().value().toString());
  }
}
