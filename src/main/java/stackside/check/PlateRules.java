package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PatientGroup;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.Term;
import stackside.model.Unit;
import stackside.quantity.Band;
import stackside.quantity.Kilograms;

/** Neutral electrodes: whether one is named, and whether it suits machine and patients. */
final class PlateRules {

  /** A neutral electrode where a profile names it. */
  private record NamedElectrode(Profile profile, Fact<Electrode> electrode) {}

  private PlateRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "neutral-electrode-missing",
            "monopolar current is approved without a neutral electrode",
            PlateRules::neutralElectrodeMissing),
        error(
            "electrode-not-split",
            "a contact-quality monitor is given a neutral electrode in one piece",
            PlateRules::electrodeNotSplit),
        error(
            "electrode-not-for-patients",
            "a neutral electrode is not made for the patients of its profile",
            PlateRules::electrodeNotForPatients),
        error(
            "electrode-does-not-fit",
            "a neutral electrode fits no neutral socket of its machine",
            PlateRules::electrodeDoesNotFit));
  }

  private static List<Finding> neutralElectrodeMissing(CheckedUnit checked) {
    return checked.unit().profiles().stream()
        .flatMap(profile -> profile.settings().stream())
        .filter(settings -> settings.neutralElectrode().isEmpty())
        .flatMap(settings -> neutralElectrodeMissing(checked.unit(), settings).stream())
        .toList();
  }

  private static Optional<Finding> neutralElectrodeMissing(Unit unit, Settings settings) {
    return settings.assigned().stream()
        .map(setting -> setting.mode().value())
        .filter(mode -> mode.kind().value().needsNeutralElectrode())
        .filter(mode -> settings.instrument().value().kind().value().needsNeutralElectrode())
        .findFirst()
        .map(mode -> neutralElectrodeMissing(unit, settings, mode));
  }

  private static Finding neutralElectrodeMissing(Unit unit, Settings settings, Mode mode) {
    return Finding.at(
            settings.instrument().at(),
            "%s sends current through the patient, but no %s is named"
                .formatted(Wording.quoted(mode), unit.word(Term.NEUTRAL_ELECTRODE)))
        .note(
            mode.kind().at(),
            "where the machine's description says that the mode is " + mode.kind().value().spoken())
        .help("add 'neutral-electrode' with the approved one");
  }

  /** Source: AORN glossary 2012, read; the IEC definitions from memory. */
  private static List<Finding> electrodeNotSplit(CheckedUnit checked) {
    return doubted(
        checked.unit(), ElectrodeDoubt.IN_ONE_PIECE, PlateRules::notSplit, PlateRules::notSplit);
  }

  private static Finding notSplit(NamedElectrode named) {
    return Finding.at(named.electrode().at(), inOnePiece(List.of(named), named.electrode().value()))
        .note(
            named.profile().machine().value().monitor().at(),
            "where the machine's description names its monitor")
        .help("name a split one, or correct the machine's monitor");
  }

  private static Finding notSplit(List<NamedElectrode> named) {
    Electrode electrode = named.get(0).electrode().value();
    return Finding.at(electrode.area().at(), inOnePiece(named, electrode))
        .note(named.get(0).electrode().at(), count(named) + ", here first")
        .help("correct what is mistyped, or name a split one in the profiles");
  }

  private static String inOnePiece(List<NamedElectrode> named, Electrode electrode) {
    return "%s is in one piece, but the contact-quality monitor of %s works only with a split one"
        .formatted(Wording.quoted(electrode), machines(named));
  }

  private static List<Finding> electrodeNotForPatients(CheckedUnit checked) {
    Unit unit = checked.unit();
    return doubted(
        unit,
        ElectrodeDoubt.OTHER_PATIENTS,
        named -> notForPatients(unit, named),
        named -> notForPatients(unit, named));
  }

  private static Finding notForPatients(Unit unit, NamedElectrode named) {
    return Finding.at(named.electrode().at(), otherPatients(unit, named))
        .note(named.electrode().value().patients().at(), "the electrode's patients")
        .help(
            "name an electrode for these patients, or say under 'patients' whom the profile is for");
  }

  private static Finding notForPatients(Unit unit, List<NamedElectrode> named) {
    return Finding.at(
            named.get(0).electrode().value().patients().at(), otherPatients(unit, named.get(0)))
        .note(named.get(0).electrode().at(), count(named) + ", here first")
        .help("correct the weights, or name an electrode for these patients in the profiles");
  }

  private static String otherPatients(Unit unit, NamedElectrode named) {
    Band<Kilograms> band = named.electrode().value().patients().value();
    PatientGroup group =
        unit.patientsOf(named.profile()).stream()
            .filter(it -> !band.covers(it.weight().value()))
            .findFirst()
            .orElseThrow();
    return "%s is for patients of %s, but the profile is for %s, %s"
        .formatted(
            Wording.quoted(named.electrode().value()),
            band.text(),
            Wording.quoted(group),
            group.weight().value().text());
  }

  private static List<Finding> electrodeDoesNotFit(CheckedUnit checked) {
    return doubted(
        checked.unit(), ElectrodeDoubt.OTHER_PLUG, PlateRules::doesNotFit, PlateRules::doesNotFit);
  }

  private static Finding doesNotFit(NamedElectrode named) {
    Electrode electrode = named.electrode().value();
    return Finding.at(named.electrode().at(), otherPlug(List.of(named), electrode))
        .note(electrode.plug().at(), "the electrode's plug")
        .help("name an electrode that fits, or add the adaptor to cables.yaml");
  }

  private static Finding doesNotFit(List<NamedElectrode> named) {
    Electrode electrode = named.get(0).electrode().value();
    return Finding.at(electrode.plug().at(), otherPlug(named, electrode))
        .note(named.get(0).electrode().at(), count(named) + ", here first")
        .help("correct the plug, name an electrode that fits, or add the adaptor to cables.yaml");
  }

  private static String otherPlug(List<NamedElectrode> named, Electrode electrode) {
    return "the plug of %s, '%s', fits no neutral socket of %s"
        .formatted(Wording.quoted(electrode), electrode.plug().value(), machines(named));
  }

  /**
   * One finding for each doubtful electrode. It points to the profile that names it. If several
   * profiles do, it points to the fact about the electrode that they share.
   */
  private static List<Finding> doubted(
      Unit unit,
      ElectrodeDoubt doubt,
      Function<NamedElectrode, Finding> single,
      Function<List<NamedElectrode>, Finding> several) {
    return named(unit, doubt).stream()
        .collect(
            Collectors.groupingBy(
                it -> it.electrode().value().id(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(same -> same.size() == 1 ? single.apply(same.get(0)) : several.apply(same))
        .toList();
  }

  /** The machines of these profiles, in words. */
  private static String machines(List<NamedElectrode> named) {
    return Wording.quoted(named.stream().map(it -> it.profile().machine().value()).toList());
  }

  /** How many profiles name it, in words. */
  private static String count(List<NamedElectrode> named) {
    return named.size() + " profiles name it";
  }

  /** The electrodes that profiles name, where this is what is wrong with them. */
  private static List<NamedElectrode> named(Unit unit, ElectrodeDoubt doubt) {
    List<NamedElectrode> found = new ArrayList<>();
    for (Profile profile : unit.profiles()) {
      profile
          .settings()
          .flatMap(Settings::neutralElectrode)
          .filter(electrode -> ElectrodeDoubt.of(unit, profile, electrode.value()) == doubt)
          .ifPresent(electrode -> found.add(new NamedElectrode(profile, electrode)));
    }
    return found;
  }
}
