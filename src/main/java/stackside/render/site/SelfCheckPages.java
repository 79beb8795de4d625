package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.difference.Differences;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.CardInUse;
import stackside.derive.question.Question;
import stackside.derive.question.Reply;
import stackside.derive.question.SelfChecks;
import stackside.derive.question.Subject;
import stackside.model.Machine;
import stackside.render.PanelPlan;
import stackside.render.Sheet;
import stackside.render.SocketMap;
import stackside.render.SvgWriter;
import stackside.render.plan.CardPlan;
import stackside.render.plan.Face;
import stackside.render.site.SelfCheckPage.QuestionItem;
import stackside.render.site.SelfCheckPage.Choice;

/** Questions for people to test themselves, one page for each generator in each room. */
final class SelfCheckPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    SelfChecks checks = SelfChecks.of(site.analysis(), cards(site));
    return Differences.places(site.unit()).stream()
        .filter(place -> !checks.about(place).isEmpty())
        .map(place -> page(place, checks.about(place), site));
  }

  /** The cards now in use, each with its edition. */
  private static List<CardInUse> cards(Website site) {
    return site.cards().stream()
        .filter(plan -> plan.face() == Face.SETTINGS)
        .map(
            plan ->
                new CardInUse(
                    new RoomAtAsset(plan.room(), plan.asset()), plan.title(), edition(plan, site)))
        .toList();
  }

  private static String edition(CardPlan plan, Website site) {
    return site.publication().editions().of(plan.name(), site.publication().on()).words();
  }

  static String path(RoomAtAsset place) {
    return "self-checks/" + key(place) + ".html";
  }

  private static String key(RoomAtAsset place) {
    return place.room().id().slug() + "--" + place.asset().id().slug();
  }

  /** Links to all of them, for the page of paths. */
  static List<RichLine> links(PageContext here) {
    SelfChecks checks = SelfChecks.of(here.site().analysis(), cards(here.site()));
    return Differences.places(here.unit()).stream()
        .filter(place -> !checks.about(place).isEmpty())
        .map(
            place ->
                here.page(name(place), path(place))
                    .then(
                        TextPiece.quiet(
                            " " + here.say("self-check.count", checks.about(place).size()))))
        .toList();
  }

  private static String name(RoomAtAsset place) {
    return place.room().title() + ", " + place.machine().title();
  }

  private static Page page(RoomAtAsset place, List<Question> questions, Website site) {
    PageContext here = site.at(path(place));
    List<QuestionItem> asked = new ArrayList<>();
    for (Question question : questions) {
      asked.add(asked(question, "question-" + (asked.size() + 1), here));
    }
    return new SelfCheckPage(
        here.frame(
            here.say("self-check.title", name(place)),
            here.page(here.say("menu.paths"), "paths.html"),
            here.link(place.room())),
        key(place),
        RichLine.of(here.say("self-check.lead")),
        asked);
  }

  private static QuestionItem asked(Question question, String id, PageContext here) {
    QuestionWords words = new QuestionWords(here);
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice(words.reply(question.right()), "right", here.say("self-check.right")));
    question.wrong().forEach(other -> choices.add(wrong(other, words)));
    choices.sort(java.util.Comparator.comparing(Choice::words));
    return new QuestionItem(
        id,
        words.asked(question),
        question.subject() instanceof Subject.SocketFor
            ? Optional.of(panel(question.place().machine(), id, here))
            : Optional.empty(),
        choices,
        words.reply(question.right()),
        words.source(question));
  }

  private static Choice wrong(Question.Elsewhere other, QuestionWords words) {
    String key =
        other.reply() instanceof Reply.Check
            ? "self-check.elsewhere-other"
            : "self-check.elsewhere";
    return new Choice(
        words.reply(other.reply()),
        "wrong",
        words.here().say(key, QuestionWords.place(other.place())));
  }

  /** The front panel with nothing plugged in. */
  private static Html panel(Machine machine, String id, PageContext here) {
    PanelPlan plan =
        new PanelPlan(
            machine,
            machine.sockets().stream()
                .sorted(java.util.Comparator.comparing(socket -> socket.place().value()))
                .map(
                    socket ->
                        new PanelPlan.Place(
                            socket,
                            socket.takes().stream()
                                .flatMap(form -> machine.plug(form.value()).stream())
                                .findFirst(),
                            List.of(),
                            List.of()))
                .toList(),
            here.words());
    return new Html(SvgWriter.svg(SocketMap.of(plan, Sheet.PHONE), id + "-panel"));
  }
}
