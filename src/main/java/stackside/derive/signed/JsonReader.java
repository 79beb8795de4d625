package stackside.derive.signed;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads JSON text strictly as RFC 8259 has it; a name written twice is refused. */
public final class JsonReader {
  private static final int DEEPEST = 60;
  private static final Pattern NUMBER =
      Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?");

  private final String text;
  private int at;

  private JsonReader(String text) {
    this.text = text;
  }

  /** The text is no JSON; the message says where. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    Unreadable(String message) {
      super(message);
    }
  }

  public static Json read(String text) throws Unreadable {
    JsonReader reader = new JsonReader(text);
    Json value = reader.value(0);
    reader.skip();
    if (reader.at < text.length()) {
      throw reader.unreadable("nothing more");
    }
    return value;
  }

  private Json value(int depth) throws Unreadable {
    if (depth > DEEPEST) {
      throw unreadable("fewer brackets");
    }
    skip();
    return switch (peek()) {
      case '{' -> members(depth);
      case '[' -> items(depth);
      case '"' -> new Json.Text(quoted());
      case 't' -> word("true", new Json.Flag(true));
      case 'f' -> word("false", new Json.Flag(false));
      case 'n' -> word("null", new Json.Nothing());
      default -> number();
    };
  }

  private Json members(int depth) throws Unreadable {
    SortedMap<String, Json> values = new TreeMap<>();
    take('{');
    if (closes('}')) {
      return new Json.Members(values);
    }
    do {
      skip();
      String name = quoted();
      skip();
      take(':');
      if (values.put(name, value(depth + 1)) != null) {
        throw unreadable("each name once, not '" + name + "' again");
      }
    } while (another());
    take('}');
    return new Json.Members(values);
  }

  private Json items(int depth) throws Unreadable {
    List<Json> values = new ArrayList<>();
    take('[');
    if (closes(']')) {
      return new Json.Items(values);
    }
    do {
      values.add(value(depth + 1));
    } while (another());
    take(']');
    return new Json.Items(values);
  }

  private boolean closes(char bracket) {
    skip();
    boolean closes = peek() == bracket;
    at += closes ? 1 : 0;
    return closes;
  }

  private boolean another() {
    return closes(',');
  }

  private Json word(String word, Json value) throws Unreadable {
    if (!text.startsWith(word, at)) {
      throw unreadable("'" + word + "'");
    }
    at += word.length();
    return value;
  }

  private Json number() throws Unreadable {
    Matcher number = NUMBER.matcher(text).region(at, text.length());
    if (!number.lookingAt()) {
      throw unreadable("a value");
    }
    at = number.end();
    double value = Double.parseDouble(number.group());
    if (!Double.isFinite(value)) {
      throw unreadable("a number of a usual size");
    }
    return new Json.Numeral(value);
  }

  private String quoted() throws Unreadable {
    take('"');
    StringBuilder words = new StringBuilder();
    while (peek() != '"') {
      if (at >= text.length() || peek() < ' ') {
        throw unreadable("a text that ends in '\"'");
      }
      char unit = text.charAt(at++);
      words.append(unit == '\\' ? escaped() : unit);
    }
    at++;
    return words.toString();
  }

  private char escaped() throws Unreadable {
    char sign = peek();
    at++;
    return switch (sign) {
      case '"', '\\', '/' -> sign;
      case 'b' -> '\b';
      case 'f' -> '\f';
      case 'n' -> '\n';
      case 'r' -> '\r';
      case 't' -> '\t';
      case 'u' -> hexadecimal();
      default -> throw unreadable("an escape that JSON knows");
    };
  }

  private char hexadecimal() throws Unreadable {
    String digits = text.substring(at, Math.min(at + 4, text.length()));
    if (!digits.matches("[0-9a-fA-F]{4}")) {
      throw unreadable("four hexadecimal digits");
    }
    at += 4;
    return (char) Integer.parseInt(digits, 16);
  }

  private void skip() {
    while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  /** The next unit, or NUL at the end, which no JSON has outside a text. */
  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private void take(char sign) throws Unreadable {
    if (peek() != sign) {
      throw unreadable("'" + sign + "'");
    }
    at++;
  }

  private Unreadable unreadable(String expected) {
    return new Unreadable("expected " + expected + " at character " + (at + 1));
  }
}
