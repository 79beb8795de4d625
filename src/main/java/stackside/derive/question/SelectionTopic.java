package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.Selected;
import stackside.derive.question.Subject.Selection;

/** How the live socket is selected. */
record SelectionTopic() implements Topic {

  @Override
  public List<Selection> subjects(RoomAtAsset place) {
    return List.of(new Selection());
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return List.of(new Selected(place.machine().selectsSocket().value()));
  }
}
