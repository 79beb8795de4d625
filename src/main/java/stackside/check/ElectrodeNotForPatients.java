package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.PatientGroup;
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
    return ElectrodeDoubt.named(analysis.unit(), ElectrodeDoubt.OTHER_PATIENTS).stream()
        .flatMap(
            named ->
                problem(analysis.unit().patientsOf(named.profile()), named.electrode()).stream())
        .toList();
  }

  private static Optional<Problem> problem(List<PatientGroup> patients, Fact<Electrode> electrode) {
    Fact<Band<Kilograms>> band = electrode.value().patients();
    return patients.stream()
        .filter(group -> !band.value().covers(group.weight().value()))
        .findFirst()
        .map(
            group ->
                FAULT
                    .at(
                        electrode.at(),
                        "%s is for patients of %s, and the profile holds for %s, %s"
                            .formatted(
                                Wording.quoted(electrode.value()),
                                band.value().text(),
                                Wording.quoted(group),
                                group.weight().value().text()))
                    .note(band.at(), "where the electrode's patients stand")
                    .help(
                        "name an electrode for these patients, or say with 'patients' whom the profile is for"));
  }
}
