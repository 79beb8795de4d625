package stackside.derive.signed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The vectors of RFC 8785: the author's reference data, read at cyberphone/json-canonicalization,
 * commit 19d51d7, testdata; digests of the expected outputs computed from them.
 */
final class CanonicalJsonTest {

  private static void becomes(String text, String canonical, String sha256) throws Exception {
    String printed = CanonicalJson.of(JsonReader.read(text));
    assertThat(printed).isEqualTo(canonical);
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(printed.getBytes(StandardCharsets.UTF_8));
    assertThat(HexFormat.of().formatHex(digest)).isEqualTo(sha256);
    assertThat(CanonicalJson.of(JsonReader.read(printed))).isEqualTo(printed);
  }

  @Test
  void arrays() throws Exception {
    becomes(
        "[ 56, { \"d\": true, \"10\": null, \"1\": [ ] } ]",
        "[56,{\"1\":[],\"10\":null,\"d\":true}]",
        "099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42");
  }

  @Test
  void structures() throws Exception {
    becomes(
        "{\"1\": {\"f\": {\"f\": \"hi\",\"F\": 5} ,\"\\n\": 56.0}, \"10\": { }, \"\": \"empty\","
            + " \"a\": { }, \"111\": [ {\"e\": \"yes\",\"E\": \"no\" } ], \"A\": { }}",
        "{\"\":\"empty\",\"1\":{\"\\n\":56,\"f\":{\"F\":5,\"f\":\"hi\"}},\"10\":{},"
            + "\"111\":[{\"E\":\"no\",\"e\":\"yes\"}],\"A\":{},\"a\":{}}",
        "605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5");
  }

  @Test
  void values() throws Exception {
    becomes(
        "{\"numbers\": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],"
            + " \"string\": \"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\","
            + " \"literals\": [null, true, false]}",
        "{\"literals\":[null,true,false],"
            + "\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
            + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}",
        "2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb");
  }

  @ParameterizedTest
  @CsvSource({
    "4340000000000001,9007199254740994",
    "4340000000000002,9007199254740996",
    "444b1ae4d6e2ef50,1e+21",
    "3eb0c6f7a0b5ed8d,0.000001",
    "3eb0c6f7a0b5ed8c,9.999999999999997e-7",
    "8000000000000000,0"
  })
  void numbersByTheirBits(String bits, String printed) {
    assertThat(CanonicalJson.number(Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16))))
        .isEqualTo(printed);
  }

  /** From the definition itself: what is printed means the same double, in no more digits. */
  @Test
  void everyNumberReadsBackAsItself() {
    Random chance = new Random(8785);
    for (int i = 0; i < 20_000; i++) {
      double value = Double.longBitsToDouble(chance.nextLong());
      if (Double.isFinite(value)) {
        String printed = CanonicalJson.number(value);
        assertThat(Double.parseDouble(printed)).isEqualTo(value);
        assertThat(digits(printed)).isLessThanOrEqualTo(digits(Double.toString(value)));
      }
    }
  }

  private static int digits(String number) {
    return number
        .replaceFirst("[eE].*", "")
        .replace("-", "")
        .replace(".", "")
        .replaceFirst("^0+", "")
        .replaceFirst("0+$", "")
        .length();
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void numberThatJsonLacks_isRefused(double value) {
    assertThatIllegalArgumentException().isThrownBy(() -> new Json.Numeral(value));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\ud800", "a\udc00", "\ud800\ud800\udc00", "\udc00\ud800"})
  void halfAPair_isRefused(String text) {
    assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.of(Json.text(text)));
  }

  @Test
  void membersAreSortedByUtf16Units() throws Exception {
    String text = "{\"\ufb33\":1,\"\ud83d\ude00\":2,\"\u20ac\":3,\"\\r\":4,\"1\":5}";
    assertThat(CanonicalJson.of(JsonReader.read(text)))
        .isEqualTo("{\"\\r\":4,\"1\":5,\"\u20ac\":3,\"\ud83d\ude00\":2,\"\ufb33\":1}");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[1,]",
        "{\"a\":1,}",
        "[01]",
        "[1 2]",
        "{\"a\":1,\"a\":2}",
        "[\"\t\"]",
        "[\"open]",
        "['a']",
        "[+1]",
        "[.5]",
        "[1.]",
        "[NaN]",
        "[1e999]",
        "[\"\\x\"]",
        "[\"\\u12\"]",
        "nul",
        "[] []",
        "\ufeff[]"
      })
  void whatIsNoJson_isRefused(String text) {
    assertThatThrownBy(() -> JsonReader.read(text)).isInstanceOf(JsonReader.Unreadable.class);
  }

  @Test
  void bracketsWithoutEnd_areRefused() {
    assertThatThrownBy(() -> JsonReader.read("[".repeat(100_000)))
        .isInstanceOf(JsonReader.Unreadable.class);
  }
}
