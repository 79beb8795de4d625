package stackside.derive.signed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of a list in which something was put between, renamed or turned round. */
final class FactChangeTest {

  private static Json.Members room(Json.Members... cards) {
    return new FactList().list("cards", Arrays.asList(cards)).json();
  }

  private static Json.Members card(String name, String lesion) {
    return new FactList()
        .put("name", Json.text(name))
        .list("lesions", List.of(Json.text(lesion)))
        .json();
  }

  private static List<String> words(Json.Members before, Json.Members after) {
    return FactChange.between(before, after).stream().map(FactChange::words).toList();
  }

  @Test
  void cardPutBetween_leavesTheOthersAlone() {
    assertThat(
            words(
                room(card("flat", "flat-small"), card("stalks", "stalk")),
                room(
                    card("flat", "flat-small"),
                    card("large", "flat-large"),
                    card("stalks", "stalk"))))
        .containsExactly(
            "cards 'large' lesions: nothing → flat-large", "cards 'large' name: nothing → large");
  }

  @Test
  void cardThatHoldsSomethingElse_isNamedByWhatItIs() {
    assertThat(words(room(card("flat", "flat-small")), room(card("flat", "flat-large"))))
        .containsExactly("cards 'flat' lesions: flat-small → flat-large");
  }

  @Test
  void cardsTurnedRound_areNoticed() {
    assertThat(
            words(
                room(card("flat", "flat-small"), card("stalks", "stalk")),
                room(card("stalks", "stalk"), card("flat", "flat-small"))))
        .containsExactly("order: cards 'flat' lesions → cards 'stalks' lesions");
  }

  @Test
  void twoOfOneName_goByTheirNumbers() {
    assertThat(
            words(
                room(card("flat", "flat-small"), card("flat", "flat-large")),
                room(card("flat", "flat-small"), card("flat", "stalk"))))
        .containsExactly("cards 2 lesions: flat-large → stalk");
  }
}
