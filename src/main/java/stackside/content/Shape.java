package stackside.content;

/** The shapes that the value of a key can have. */
enum Shape {
  VALUE(
      " takes one value, and this is a list or a group of keys",
      "keep one value; put a text with ': ' or brackets in it in quotes"),
  LIST(
      " takes a list, and this is something else",
      "put the items in square brackets, or each on a line of its own after a hyphen"),
  GROUP(
      " takes keys of its own, and this is something else",
      "write each key with its value on a line of its own, further in"),
  LINK(" takes a thing, and this is none", "write it in the form 'kind:id'");

  private final String message;
  private final String help;

  Shape(String message, String help) {
    this.message = message;
    this.help = help;
  }

  String message() {
    return message;
  }

  String help() {
    return help;
  }
}
