package stackside.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class InitialsTest {

  @Test
  void initials_areRead() {
    assertThat(Initials.parse("KM").text()).isEqualTo("KM");
    assertThat(Initials.parse("ÅØ")).hasToString("ÅØ");
    assertThat(Initials.parse("山田")).hasToString("山田");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Kim Marsh",
        "Jane",
        "jm",
        "Km",
        "SMITH",
        "K.M.",
        "KM1",
        "marshk",
        "k@m",
        "",
        "KM "
      })
  void nameOrAnythingElse_isRefused(String text) {
    assertThatThrownBy(() -> Initials.parse(text))
        .asInstanceOf(type(UnreadableText.class))
        .satisfies(
            e -> {
              assertThat(e.problem()).contains("are not initials");
              assertThat(e.hint()).contains("not a name");
            });
  }
}
