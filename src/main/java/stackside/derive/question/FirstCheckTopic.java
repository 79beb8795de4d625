package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.Check;
import stackside.derive.question.Subject.FirstCheck;
import stackside.model.Drill;
import stackside.model.Unit;

/** What to check first when a sign is seen. */
record FirstCheckTopic(Unit unit) implements Topic {

  @Override
  public List<FirstCheck> subjects(RoomAtAsset place) {
    return drills(place).stream().map(FirstCheck::new).toList();
  }

  private List<Drill> drills(RoomAtAsset place) {
    return unit.drillsFor(place.machine()).stream()
        .filter(drill -> drill.sign().ofMachine())
        .toList();
  }

  /** The first check of every drill that the sign may call for. */
  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return subject instanceof FirstCheck asked
        ? unit.drillsFor(place.machine()).stream()
            .filter(drill -> !drill.sign().contradicts(asked.drill().sign()))
            .map(FirstCheckTopic::first)
            .toList()
        : List.of();
  }

  @Override
  public List<Reply> elsewhere(RoomAtAsset other, Subject subject) {
    return drills(other).stream().map(FirstCheckTopic::first).toList();
  }

  private static Reply first(Drill drill) {
    return new Check(drill.checks().get(0));
  }
}
