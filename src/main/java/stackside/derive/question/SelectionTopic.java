package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.Place;
import stackside.derive.question.Reply.Selected;
import stackside.derive.question.Subject.Selection;

/** How the live socket is selected. */
record SelectionTopic() implements Topic {

  @Override
  public List<Selection> subjects(Place place) {
    return List.of(new Selection());
  }

  @Override
  public List<Reply> right(Place place, Subject subject) {
    return List.of(new Selected(place.machine().selectsSocket().value()));
  }
}
