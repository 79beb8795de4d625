package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * A procedure room: its generators, what is kept there and what it offers.
 *
 * @param assets a mobile generator may be listed in several rooms
 * @param cards how the settings are divided between several cards; empty if one card holds them all
 * @param copies number of laminated copies of each card
 */
public record Room(
    Location at,
    ThingId id,
    Fact<String> name,
    Fact<Premises> location,
    @AtLeastOne List<Fact<Asset>> assets,
    List<Fact<FootSwitch>> footSwitches,
    @AtLeastOne List<Fact<PatientGroup>> patients,
    RoomStock keeps,
    @AtLeastOne List<Offer> offers,
    List<CardPart> cards,
    Fact<Integer> copies)
    implements Thing {
  public Room {
    assets = List.copyOf(assets);
    footSwitches = List.copyOf(footSwitches);
    patients = List.copyOf(patients);
    offers = List.copyOf(offers);
    cards = List.copyOf(cards);
  }

  @Override
  public String title() {
    return name.value();
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
