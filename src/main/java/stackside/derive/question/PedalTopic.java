package stackside.derive.question;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.PedalAt;
import stackside.derive.question.Subject.PedalThat;
import stackside.model.FootSwitch;
import stackside.model.Pedal;
import stackside.model.PedalAction;
import stackside.model.Unit;

/** Which pedal cuts and which coagulates. */
record PedalTopic(Unit unit) implements Topic {

  @Override
  public List<PedalThat> subjects(RoomAtAsset place) {
    return Stream.of(PedalAction.values()).map(PedalThat::new).toList();
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    List<Reply> right = new ArrayList<>();
    if (subject instanceof PedalThat asked) {
      for (FootSwitch footSwitch : unit.footSwitchesFor(place.room(), place.machine())) {
        List<Pedal> pedals = footSwitch.pedals();
        for (int i = 0; i < pedals.size(); i++) {
          if (pedals.get(i).does().value() == asked.action()) {
            right.add(new PedalAt(pedals.get(i).colour().value(), i + 1, pedals.size()));
          }
        }
      }
    }
    return right;
  }
}
