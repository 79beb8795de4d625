package stackside.check;

import java.util.List;
import stackside.derive.Analysis;
import stackside.model.PatientGroup;
import stackside.model.Unit;
import stackside.quantity.Band;
import stackside.quantity.Kilograms;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds neutral electrodes that are not made for the weight of a profile's patients. */
final class ElectrodeNotForPatients implements Rule {
  private static final Fault FAULT =
      new Fault(
          "electrode-not-for-patients",
          Severity.ERROR,
          "a neutral electrode is not made for the patients of its profile");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    Unit unit = analysis.unit();
    return ElectrodeDoubt.problems(
        unit,
        ElectrodeDoubt.OTHER_PATIENTS,
        named -> single(unit, named),
        named -> several(unit, named));
  }

  private static Problem single(Unit unit, ElectrodeDoubt.Named named) {
    return FAULT
        .at(named.electrode().at(), words(unit, named))
        .note(named.electrode().value().patients().at(), "where the electrode's patients stand")
        .help(
            "name an electrode for these patients, or say under 'patients' whom the profile is for");
  }

  private static Problem several(Unit unit, List<ElectrodeDoubt.Named> named) {
    return FAULT
        .at(named.get(0).electrode().value().patients().at(), words(unit, named.get(0)))
        .note(named.get(0).electrode().at(), ElectrodeDoubt.count(named) + ", here first")
        .help("correct the weights, or name an electrode for these patients in the profiles");
  }

  private static String words(Unit unit, ElectrodeDoubt.Named named) {
    Band<Kilograms> band = named.electrode().value().patients().value();
    PatientGroup group =
        unit.patientsOf(named.profile()).stream()
            .filter(it -> !band.covers(it.weight().value()))
            .findFirst()
            .orElseThrow();
    return "%s is for patients of %s, and the profile holds for %s, %s"
        .formatted(
            Wording.quoted(named.electrode().value()),
            band.text(),
            Wording.quoted(group),
            group.weight().value().text());
  }
}
