package stackside.derive.question;

import java.util.List;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Subject.AnswerTo;
import stackside.model.Answer;
import stackside.model.Cold;
import stackside.model.NotApproved;
import stackside.model.Profile;
import stackside.model.Settings;

/** What to set for a lesion at a site. */
record AnswerTopic(AnswersByPlace served) implements Topic {

  @Override
  public List<AnswerTo> subjects(RoomAtAsset place) {
    return served.questions(place);
  }

  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return subject instanceof AnswerTo asked
        ? served.answers(place, asked).stream().map(AnswerTopic::reply).toList()
        : List.of();
  }

  /** Other programs at this place that do the same through the same socket. */
  @Override
  public List<Reply> wouldDo(RoomAtAsset place, Subject subject) {
    List<Reply> right = right(place, subject);
    return served
        .settings(place)
        .<Reply>map(Reply.Set::new)
        .filter(reply -> right.stream().anyMatch(reply::means))
        .toList();
  }

  private static Reply reply(Profile profile) {
    Answer answer = profile.answer();
    if (answer instanceof Settings settings) {
      return new Reply.Set(settings);
    }
    if (answer instanceof Cold) {
      return new Reply.Cold();
    }
    if (answer instanceof NotApproved) {
      return new Reply.NotApproved();
    }
    throw new IllegalStateException("an answer that nobody can give: " + answer);
  }

  @Override
  public int most() {
    return 5;
  }
}
