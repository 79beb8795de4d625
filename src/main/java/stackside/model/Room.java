package stackside.model;

import java.util.List;
import stackside.source.Location;

/**
 * A procedure room: its generators, what is kept there, what it offers.
 *
 * @param assets a mobile generator may stand in several rooms' lists
 * @param copies laminated copies of each card
 */
public record Room(
    Location at,
    ThingId id,
    Fact<String> name,
    Fact<Premises> location,
    List<Fact<Asset>> assets,
    List<Fact<FootSwitch>> footSwitches,
    List<Fact<PatientGroup>> patients,
    Kept keeps,
    List<Offer> offers,
    Fact<Integer> copies)
    implements Thing {
  public Room {
    assets = List.copyOf(assets);
    footSwitches = List.copyOf(footSwitches);
    patients = List.copyOf(patients);
    offers = List.copyOf(offers);
  }

  @Override
  public String title() {
    return name.value();
  }
}
