package stackside.derive.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.difference.Differences;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Question.Elsewhere;

/**
 * All questions of a unit, place by place. Wrong answers are right in other places and never
 * invented, so that each is a mistake that somebody used to another room would make.
 */
public record SelfChecks(List<Question> questions) {
  private static final int MOST_WRONG = 3;

  public SelfChecks {
    questions = List.copyOf(questions);
  }

  /** The questions that a unit's own data answer. */
  public static SelfChecks of(Analysis analysis, List<CardInUse> cards) {
    List<RoomAtAsset> places = Differences.places(analysis.unit());
    List<Question> questions = new ArrayList<>();
    List<Asking> all =
        topics(analysis, cards).stream().map(topic -> new Asking(topic, places)).toList();
    for (RoomAtAsset place : places) {
      all.forEach(asking -> questions.addAll(asking.about(place)));
    }
    return new SelfChecks(questions);
  }

  private static List<Topic> topics(Analysis analysis, List<CardInUse> cards) {
    AnswersByPlace served = AnswersByPlace.of(analysis);
    return List.of(
        new SocketTopic(served),
        new SelectionTopic(),
        new AnswerTopic(served),
        new OnPedalTopic(served),
        new PedalTopic(analysis.unit()),
        new NeutralElectrodeTopic(served),
        new FirstCheckTopic(analysis.unit()),
        new FaultTopic(analysis),
        new ContactTopic(),
        new CardTopic(cards));
  }

  /** The questions about a place. */
  public List<Question> about(RoomAtAsset place) {
    return questions.stream().filter(question -> question.place().is(place)).toList();
  }

  /** One topic, and what has already been found about each subject elsewhere. */
  private static final class Asking {
    private final Topic topic;
    private final List<RoomAtAsset> places;
    private final Map<Subject, List<Elsewhere>> known = new LinkedHashMap<>();

    Asking(Topic topic, List<RoomAtAsset> places) {
      this.topic = topic;
      this.places = places;
    }

    /** Questions with the most choices first, otherwise in content order. */
    List<Question> about(RoomAtAsset place) {
      return topic.subjects(place).stream()
          .flatMap(subject -> question(place, subject).stream())
          .sorted(Comparator.comparing(question -> -question.wrong().size()))
          .limit(topic.most())
          .toList();
    }

    private Optional<Question> question(RoomAtAsset place, Subject subject) {
      List<Reply> all = topic.right(place, subject);
      List<Reply> right = distinct(all);
      if (right.size() != 1) {
        return Optional.empty();
      }
      // Right answers in the same words may differ in meaning, so all of them are ruled out as
      // wrong answers.
      List<Reply> taken = new ArrayList<>(all);
      taken.addAll(topic.wouldDo(place, subject));
      List<Elsewhere> wrong = new ArrayList<>();
      for (Elsewhere other : elsewhere(subject)) {
        if (wrong.size() < MOST_WRONG && taken.stream().noneMatch(other.reply()::means)) {
          wrong.add(other);
          taken.add(other.reply());
        }
      }
      return wrong.isEmpty()
          ? Optional.empty()
          : Optional.of(new Question(place, subject, right.get(0), wrong));
    }

    /** What is right anywhere, without duplicates, each with the first place where it is right. */
    private List<Elsewhere> elsewhere(Subject subject) {
      return known.computeIfAbsent(subject, this::everywhere);
    }

    private List<Elsewhere> everywhere(Subject subject) {
      Map<Reply, Elsewhere> found = new LinkedHashMap<>();
      for (RoomAtAsset place : places) {
        topic
            .elsewhere(place, subject)
            .forEach(reply -> found.putIfAbsent(reply, new Elsewhere(place, reply)));
      }
      return List.copyOf(found.values());
    }

    private static List<Reply> distinct(List<Reply> replies) {
      List<Reply> distinct = new ArrayList<>();
      replies.stream()
          .filter(reply -> distinct.stream().noneMatch(reply::means))
          .forEach(distinct::add);
      return distinct;
    }
  }
}
