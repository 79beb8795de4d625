package stackside.content;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.net.URI;
import java.net.URISyntaxException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import stackside.model.CrestFactor;
import stackside.model.Level;
import stackside.model.UnreadableText;
import stackside.model.Word;
import stackside.quantity.Band;
import stackside.quantity.Measure;
import stackside.quantity.Quantity;
import stackside.quantity.UnreadableQuantity;
import stackside.source.Location;
import stackside.source.Problem;

/** Turns a single text into a value: a quantity, a date, a word of a closed list, plain words. */
final class ScalarReader {
  private static final int LONGEST_TEXT = 2_000;
  private static final Pattern FIXED_SPACES = Pattern.compile("[\\u00A0\\u2007\\u2009\\u202F]");
  private static final Pattern LINE_ENDS = Pattern.compile("\\s*\\n\\s*");
  private static final int LONGEST_VALUE = 200;

  /** What {@code start} writes in each place that the unit must fill. */
  private static final String PLACE_TO_FILL = "FILL-IN";

  private final Findings findings;
  private final Map<Class<?>, Boolean> readsItself = new HashMap<>();

  ScalarReader(Findings findings) {
    this.findings = findings;
  }

  /** The value, or empty if the text is no such value, which is then reported. */
  Optional<Object> read(Type type, SourceNode.Scalar scalar, String key) {
    if (scalar.nothing()) {
      return report(
          ReadingFaults.NO_VALUE
              .at(scalar.at(), Quote.of(key) + " has no value")
              .help("write its value, or remove the key if it is optional"));
    }
    return text(scalar).flatMap(text -> value(type, text, scalar, key));
  }

  /** The text on one line, with plain spaces only. */
  Optional<String> text(SourceNode.Scalar scalar) {
    int hidden = HiddenCharacters.firstIn(scalar.text());
    if (hidden >= 0) {
      findings.add(HiddenCharacters.problem(scalar.text().codePointAt(hidden), scalar.at()));
      return Optional.empty();
    }
    String text =
        LINE_ENDS
            .matcher(FIXED_SPACES.matcher(scalar.text()).replaceAll(" "))
            .replaceAll(" ")
            .strip();
    if (text.length() > LONGEST_TEXT) {
      findings.add(
          ReadingFaults.TOO_LONG
              .at(scalar.at(), "this text is " + text.length() + " characters long")
              .help("keep it under " + LONGEST_TEXT + " characters"));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private Optional<Object> value(Type type, String text, SourceNode.Scalar scalar, String key) {
    Location at = scalar.at();
    if (isPlaceToFill(text)) {
      return report(placeToFill(at, key));
    }
    if (type == String.class) {
      return Optional.of(text);
    }
    if (text.length() > LONGEST_VALUE) {
      return report(
          ReadingFaults.TOO_LONG
              .at(at, "the text of " + Quote.of(key) + " is " + text.length() + " characters long")
              .help("look for a quote or a line end that is missing"));
    }
    if (isNumeric(type) && DecimalComma.in(text)) {
      return report(DecimalComma.problem(at, text));
    }
    if (type instanceof ParameterizedType band && band.getRawType() == Band.class) {
      return attempt(at, () -> band(text, (Class<?>) band.getActualTypeArguments()[0]));
    }
    Class<?> plain = (Class<?>) type;
    if (plain.isEnum()) {
      return word(plain, text, scalar, key);
    }
    if (plain == Integer.class) {
      return wholeNumber(text, at);
    }
    if (plain == Boolean.class) {
      return yesOrNo(text, at, key);
    }
    if (plain == LocalDate.class) {
      return date(text, at);
    }
    if (plain == URI.class) {
      return address(text, at);
    }
    if (plain == Level.class) {
      return level(text, at);
    }
    return attempt(at, () -> parsed(plain, text));
  }

  private static boolean isNumeric(Type type) {
    return type instanceof ParameterizedType
        || (type instanceof Class<?> plain
            && (Quantity.class.isAssignableFrom(plain)
                || plain == Integer.class
                || plain == CrestFactor.class));
  }

  /** Whether a text only marks a place that the unit must fill. */
  static boolean isPlaceToFill(String text) {
    return text.strip().equals(PLACE_TO_FILL);
  }

  static Problem placeToFill(Location at, String key) {
    return ReadingFaults.PLACE_TO_FILL
        .at(at, Quote.of(key) + " is still to be filled in")
        .help("write the value in place of " + Quote.of(PLACE_TO_FILL));
  }

  private Optional<Object> report(Problem problem) {
    findings.add(problem);
    return Optional.empty();
  }

  private Optional<Object> word(Class<?> type, String text, SourceNode.Scalar scalar, String key) {
    List<Word> words = words(type);
    Optional<Word> chosen =
        words.stream()
            .filter(word -> word.word().equals(text) || word.spoken().equals(text))
            .findFirst();
    if (chosen.isPresent()) {
      return chosen.map(word -> word);
    }
    boolean cell = scalar.style() == SourceNode.Style.CELL;
    List<String> names = words.stream().map(cell ? Word::spoken : Word::word).toList();
    return report(
        ReadingFaults.UNKNOWN_WORD
            .at(scalar.at(), Quote.of(text) + " is not a choice for " + Quote.of(key))
            .help(NearNames.questionOr("choose " + NearNames.quoted(names, " or "), text, names)));
  }

  static List<Word> words(Class<?> type) {
    return Arrays.stream(type.getEnumConstants()).map(Word.class::cast).toList();
  }

  private Optional<Object> wholeNumber(String text, Location at) {
    if (text.matches("0|[1-9]\\d{0,3}")) {
      return Optional.of(Integer.valueOf(text));
    }
    String message =
        text.matches("0\\d+")
            ? " has an unnecessary leading zero"
            : text.matches("\\d+") ? " is far too large" : " is not a whole number";
    return report(
        ReadingFaults.NOT_A_NUMBER
            .at(at, Quote.of(text) + message)
            .help("write a whole number in digits, without sign, unit or leading zero"));
  }

  private Optional<Object> yesOrNo(String text, Location at, String key) {
    if (text.equals("yes") || text.equals("no")) {
      return Optional.of(text.equals("yes"));
    }
    return report(
        ReadingFaults.NOT_YES_OR_NO
            .at(at, Quote.of(text) + " is neither yes nor no")
            .help("write 'yes' or 'no' for " + Quote.of(key)));
  }

  private Optional<Object> date(String text, Location at) {
    if (!text.matches("(19|20|21)\\d\\d-\\d\\d-\\d\\d")) {
      return report(
          ReadingFaults.NOT_A_DATE
              .at(at, Quote.of(text) + " is not a date")
              .help("write year, month and day in the form '2026-03-02'"));
    }
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      return report(
          ReadingFaults.NOT_A_DATE
              .at(at, Quote.of(text) + " is not a day in the calendar")
              .help("write year, month and day in this order"));
    }
  }

  private Optional<Object> address(String text, Location at) {
    try {
      URI address = new URI(text);
      if (("https".equals(address.getScheme()) || "http".equals(address.getScheme()))
          && address.getHost() != null
          && address.getUserInfo() == null) {
        return Optional.of(address);
      }
    } catch (URISyntaxException e) {
      // told below, in the same words
    }
    return report(
        ReadingFaults.NO_SENSE
            .at(at, Quote.of(text) + " is no address of a website")
            .help("write the whole address, beginning with 'https://'"));
  }

  private Optional<Object> level(String text, Location at) {
    if (text.matches("0\\d+")) {
      return wholeNumber(text, at);
    }
    return Optional.of(new Level(text));
  }

  private static Object band(String text, Class<?> quantity) {
    return bandOf(text, measure(quantity));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // every quantity compares with its own kind
  private static Object bandOf(String text, Measure<?> measure) {
    return Band.parse(text, (Measure) measure);
  }

  private static Measure<?> measure(Class<?> quantity) {
    try {
      Field measure = quantity.getField("MEASURE");
      return (Measure<?>) measure.get(null);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(quantity + " has no measure", e);
    }
  }

  /** Whether values of a type are read from a text by the type itself. */
  boolean reads(Class<?> type) {
    return readsItself.computeIfAbsent(
        type,
        any ->
            Arrays.stream(type.getMethods())
                .anyMatch(
                    method ->
                        method.getName().equals("parse")
                            && Modifier.isStatic(method.getModifiers())
                            && Arrays.equals(
                                method.getParameterTypes(), new Class<?>[] {String.class})));
  }

  private static Object parsed(Class<?> type, String text) {
    if (Quantity.class.isAssignableFrom(type)) {
      return measure(type).parse(text);
    }
    try {
      Method parse = type.getMethod("parse", String.class);
      return parse.invoke(null, text);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException unreadable) {
        throw unreadable;
      }
      throw new IllegalStateException(type + " failed to read " + text, e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("nobody knows how to read a " + type, e);
    }
  }

  private Optional<Object> attempt(Location at, java.util.function.Supplier<Object> reading) {
    try {
      return Optional.of(reading.get());
    } catch (UnreadableQuantity e) {
      return report(ReadingFaults.NOT_A_QUANTITY.at(at, e.problem()).help(e.hint()));
    } catch (UnreadableText e) {
      return report(ReadingFaults.NO_SENSE.at(at, e.problem()).help(e.hint()));
    }
  }
}
