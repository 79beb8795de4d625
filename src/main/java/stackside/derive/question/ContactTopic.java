package stackside.derive.question;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.Call;
import stackside.derive.question.Subject.CallAt;

/** Whom to call at night and by day. */
record ContactTopic() implements Topic {
  private static final List<CallAt> HOURS =
      List.of(
          new CallAt(DayOfWeek.WEDNESDAY, LocalTime.of(3, 0)),
          new CallAt(DayOfWeek.WEDNESDAY, LocalTime.of(11, 0)),
          new CallAt(DayOfWeek.SUNDAY, LocalTime.of(15, 0)));

  @Override
  public List<CallAt> subjects(RoomAtAsset place) {
    return HOURS;
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return subject instanceof CallAt hour
        ? place.room().location().value().answering(hour.day(), hour.time()).stream()
            .<Reply>map(Call::new)
            .toList()
        : List.of();
  }

  /** Everyone who answers there at any of the hours. */
  @Override
  public List<Reply> elsewhere(RoomAtAsset other, Subject subject) {
    return HOURS.stream().flatMap(hour -> right(other, hour).stream()).toList();
  }

  @Override
  public int most() {
    return 2;
  }
}
