package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds words that other ink makes hard to read. */
final class WordsOverlap implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "words-overlap", Severity.ERROR, "words on a card lie over other words or cross a line");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    List<PrintedWords> words = card.seen().words();
    for (int i = 0; i < words.size(); i++) {
      PrintedWords one = words.get(i);
      for (PrintedWords other : words.subList(i + 1, words.size())) {
        if (one.box().overlaps(other.box())) {
          problems.add(
              FAULT.at(card.at(one), "'" + one.text() + "' and '" + other.text() + "' overlap"));
        }
      }
      if (card.seen().areas().stream().anyMatch(area -> crosses(one, area))) {
        problems.add(FAULT.at(card.at(one), "'" + one.text() + "' crosses a line"));
      }
    }
    return problems;
  }

  private static boolean crosses(PrintedWords words, PaintedArea area) {
    return words.box().overlaps(area.box()) && !area.box().holds(words.box());
  }
}
