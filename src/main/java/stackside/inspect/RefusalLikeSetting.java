package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.render.Words;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds words that forbid a setting and stand on white like one, and settings on their ground. */
final class RefusalLikeSetting implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "refusal-like-setting",
          Severity.ERROR,
          "what must not be set or pressed looks like a setting");

  private static final double WHITE_FROM = 97;
  private static final double DARK_TO = 80;

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<String> refusals = refusals(card.publication().words());
    List<PrintedWords> cells =
        card.seen().words().stream().filter(words -> words.roles().contains("TD")).toList();
    List<Box> grounds =
        card.seen().areas().stream()
            .filter(RefusalLikeSetting::isGround)
            .map(PaintedArea::box)
            .toList();
    List<Problem> problems = new ArrayList<>();
    for (PrintedWords words : cells) {
      if (refuses(words, refusals)
          && grounds.stream().noneMatch(ground -> ground.holds(words.box()))) {
        problems.add(FAULT.at(card.at(words), "'" + words.text().strip() + "' stands on white"));
      }
    }
    for (Box ground : grounds) {
      List<PrintedWords> on = cells.stream().filter(words -> ground.overlaps(words.box())).toList();
      if (on.stream().noneMatch(words -> refuses(words, refusals))) {
        problems.add(FAULT.at(card.at(), card.name() + " shades what is not refused"));
      }
    }
    return problems;
  }

  /** How words begin that forbid. */
  private static List<String> refusals(Words words) {
    return Stream.of(
            words.say("card.do-not-press"),
            words.say("card.not-approved"),
            words.say("card.no-answer"),
            words.say("card.several"),
            words.say("card.not-on-this", ""))
        .map(each -> each.strip().replaceFirst("\\.$", "").strip())
        .toList();
  }

  private static boolean refuses(PrintedWords words, List<String> refusals) {
    String text = words.text().strip();
    return refusals.stream().anyMatch(text::startsWith);
  }

  private static boolean isGround(PaintedArea area) {
    return !area.inFigure()
        && area.fill()
            .filter(fill -> !fill.coloured())
            .filter(fill -> fill.lightness() > DARK_TO && fill.lightness() < WHITE_FROM)
            .isPresent();
  }
}
