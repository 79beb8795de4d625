package stackside.derive.guidance;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * All questions about a unit's answers and machines.
 *
 * @param walls the same mode set higher where the wall is thinner
 * @param patients the same mode set higher for lighter patients
 * @param coldSnare current where a cold snare is recommended
 * @param sparks soft modes that can spark and cuts that cannot
 * @param overMost modes above the maximum that a machine may deliver
 */
public record Questions(
    List<WallQuestion> walls,
    List<PatientQuestion> patients,
    List<ColdSnareQuestion> coldSnare,
    List<SparkQuestion> sparks,
    List<OverMost> overMost) {

  public Questions {
    walls = List.copyOf(walls);
    patients = List.copyOf(patients);
    coldSnare = List.copyOf(coldSnare);
    sparks = List.copyOf(sparks);
    overMost = List.copyOf(overMost);
  }

  /** The questions that express this doubt, only the first for each mode. */
  public List<SparkQuestion> sparks(SparkQuestion.Doubt doubt) {
    Set<ThingId> asked = new HashSet<>();
    return sparks.stream()
        .filter(question -> question.doubt() == doubt)
        .filter(question -> asked.add(question.mode().id()))
        .toList();
  }

  public static Questions of(Unit unit) {
    return new Questions(
        WallQuestion.of(unit),
        PatientQuestion.of(unit),
        ColdSnareQuestion.of(unit),
        SparkQuestion.of(unit),
        OverMost.of(unit));
  }
}
