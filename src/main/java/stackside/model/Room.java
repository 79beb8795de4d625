package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * A procedure room: its generators, what is kept there, what it offers.
 *
 * @param assets a mobile generator may stand in several rooms' lists
 * @param cards how the settings are shared out over several cards; empty where one card holds them
 * @param copies laminated copies of each card
 */
public record Room(
    Location at,
    ThingId id,
    Fact<String> name,
    Fact<Premises> location,
    @AtLeastOne List<Fact<Asset>> assets,
    List<Fact<FootSwitch>> footSwitches,
    @AtLeastOne List<Fact<PatientGroup>> patients,
    Kept keeps,
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

  /** By the id alone; hashing all that hangs on a thing would cost more than any lookup. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
