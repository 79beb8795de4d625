package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds yellow and blue areas beside which neither the colour nor what it does is said. */
final class ColourWithoutWord implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "colour-without-word", Severity.ERROR, "a colour on a card is not also said in words");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double BESIDE = 25;

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    for (PaintedArea area : card.seen().areas()) {
      if (area.fill().filter(Colour::coloured).isPresent()) {
        String word = word(area.fill().orElseThrow());
        if (!said(card, area, word)
            || !(said(card, area, "cut") || said(card, area, "coagulation"))) {
          problems.add(
              FAULT.at(
                  card.at(),
                  card.name()
                      + " has a "
                      + word
                      + " area without '"
                      + word
                      + "' and what it does"));
        }
      }
    }
    return problems;
  }

  private static String word(Colour colour) {
    return colour.blue() > colour.red() ? "blue" : "yellow";
  }

  private static boolean said(InspectedCard card, PaintedArea area, String word) {
    return card.seen().words().stream()
        .filter(words -> words.roles().equals(area.roles()))
        .filter(words -> words.text().toLowerCase(Locale.ROOT).contains(word))
        .anyMatch(
            words ->
                words.box().left() < area.box().right()
                    && area.box().left() < words.box().right()
                    && Math.abs(words.box().top() - area.box().bottom()) < BESIDE);
  }
}
