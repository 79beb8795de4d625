package stackside.derive.question;

import java.util.List;
import stackside.derive.chain.Chains;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.Plate;
import stackside.derive.question.Subject.NeutralElectrode;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.PatientGroup;
import stackside.model.Profile;
import stackside.model.SocketKind;

/** Which neutral electrode the patients of a room get. */
record NeutralElectrodeTopic(AnswersByPlace served) implements Topic {

  @Override
  public List<NeutralElectrode> subjects(RoomAtAsset place) {
    return place.room().patients().stream().map(Fact::value).map(NeutralElectrode::new).toList();
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return subject instanceof NeutralElectrode asked
        ? served.profiles(place).stream()
            .filter(profile -> isFor(profile, asked.patients()))
            .flatMap(profile -> profile.settings().stream())
            .flatMap(settings -> settings.neutralElectrode().stream())
            .<Reply>map(electrode -> new Plate(electrode.value()))
            .toList()
        : List.of();
  }

  private boolean isFor(Profile profile, PatientGroup patients) {
    return served.analysis().unit().patientsOf(profile).stream()
        .anyMatch(group -> group.id().equals(patients.id()));
  }

  /** Electrodes for other patients in other places are also plausible mistakes. */
  @Override
  public List<Reply> elsewhere(RoomAtAsset other, Subject subject) {
    return subjects(other).stream().flatMap(asked -> right(other, asked).stream()).toList();
  }

  /** Any other electrode that connects to the machine and suits some of the patients. */
  @Override
  public List<Reply> wouldDo(RoomAtAsset place, Subject subject) {
    return subject instanceof NeutralElectrode asked
        ? served.analysis().unit().electrodes().stream()
            .filter(electrode -> suits(electrode, place, asked.patients()))
            .<Reply>map(Plate::new)
            .toList()
        : List.of();
  }

  private static boolean suits(Electrode electrode, RoomAtAsset place, PatientGroup patients) {
    return electrode.patients().value().overlaps(patients.weight().value())
        && place.machine().sockets().stream()
            .filter(socket -> socket.kind().value() == SocketKind.NEUTRAL)
            .anyMatch(socket -> Chains.in(place.room()).shortest(electrode, socket).isPresent());
  }
}
