package stackside.derive.signed;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import stackside.model.CardPart;
import stackside.model.Contact;
import stackside.model.FootSwitch;
import stackside.model.RoomStock;
import stackside.model.Offer;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.UnitDetails;

/**
 * What a signature under a room covers: which machines stand there, what is kept and offered, whom
 * to call, and the make-safe lines of its cards.
 */
final class RoomFacts {
  private RoomFacts() {}

  static FactList of(UnitDetails unit, Room room) {
    return new FactList()
        .list("make-safe", unit.makeSafe().stream().map(each -> Json.text(each.value())).toList())
        .text("name", room.name())
        .text("location", room.location().value().name())
        .list("contacts", room.location().value().contacts().stream().map(RoomFacts::of).toList())
        .list(
            "assets", room.assets().stream().map(asset -> of(asset.value())).sorted(BY_ID).toList())
        .list("foot-switches", room.footSwitches().stream().map(f -> of(f.value())).toList())
        .ids("patients", room.patients())
        .members("keeps", of(room.keeps()))
        .list("offers", room.offers().stream().map(RoomFacts::of).toList())
        .list("cards", room.cards().stream().map(RoomFacts::of).toList())
        .number("copies", room.copies());
  }

  private static final Comparator<Json.Members> BY_ID =
      Comparator.comparing(members -> members.text("id").orElse(""));

  private static Json.Members of(stackside.model.Asset asset) {
    return new FactList()
        .text("id", asset.id().slug())
        .text("machine", asset.machine().value().id().slug())
        .json();
  }

  private static Json.Members of(Contact contact) {
    return new FactList()
        .text("id", contact.id().slug())
        .text("role", contact.role())
        .text("phone", contact.phone())
        .text("hours", contact.hours().value().words())
        .json();
  }

  private static Json.Members of(FootSwitch footSwitch) {
    List<Json> pedals =
        footSwitch.pedals().stream()
            .map(pedal -> pedal.colour().value().word() + ": " + pedal.does().value().word())
            .map(Json::text)
            .toList();
    return new FactList()
        .text("id", footSwitch.id().slug())
        .text("name", footSwitch.name())
        .list("pedals", pedals)
        .json();
  }

  private static FactList of(RoomStock keeps) {
    return new FactList()
        .ids("instruments", keeps.instruments())
        .ids("cables", keeps.cables())
        .ids("neutral-electrodes", keeps.neutralElectrodes())
        .ids("spares", keeps.spares())
        .text("spares-where", keeps.sparesWhere());
  }

  private static Json.Members of(Offer offer) {
    return new FactList()
        .ids("lesions", offer.lesions())
        .list("sites", slugs(offer.allSites()))
        .json();
  }

  private static Json.Members of(CardPart part) {
    return new FactList()
        .text("name", part.name())
        .ids("sites", part.sites())
        .ids("lesions", part.lesions())
        .json();
  }

  private static List<Json> slugs(Collection<Site> sites) {
    return sites.stream().map(site -> site.id().slug()).sorted().map(Json::text).toList();
  }
}
