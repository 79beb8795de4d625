package stackside.derive.coverage;

import stackside.model.Asset;
import stackside.model.Lesion;
import stackside.model.Machine;
import stackside.model.Offer;
import stackside.model.PatientGroup;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.Step;

/** One question that a room has to answer on one of its generators, with the answer found. */
public record Cell(
    Room room,
    Asset asset,
    Offer offer,
    Lesion lesion,
    Site site,
    Step step,
    PatientGroup patients,
    Cover cover) {

  public Machine machine() {
    return asset.machine().value();
  }
}
