package stackside.content;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Severity;

/** The kinds of mistakes that reading can meet, beside the rules of the catalogue. */
public final class ReadingFaults {

  // Files and folders
  public static final Fault NO_CONTENT = error("no-content", "a folder holds no unit's content");
  public static final Fault UNREADABLE_FILE =
      error("unreadable-file", "a file of the content cannot be opened");
  public static final Fault LEADS_OUT =
      error("leads-out-of-folder", "a symbolic link leads out of the content folder");
  public static final Fault UNKNOWN_FILE =
      warning("unknown-file", "a file or folder has no place in a unit's content and is not read");
  public static final Fault UNKNOWN_TEMPLATE =
      error("unknown-template", "a file among the templates replaces nothing of the program");
  public static final Fault TOO_MANY_FILES =
      error("too-many-files", "the content folder holds far too many files");
  public static final Fault FILE_TOO_LARGE =
      error("file-too-large", "a file is far too large for what it should hold");
  public static final Fault EMPTY_FILE = error("empty-file", "a file holds nothing");
  public static final Fault NOT_UTF_8 = error("not-utf-8", "a file is not saved as UTF-8 text");
  public static final Fault HIDDEN_CHARACTER =
      error("hidden-character", "a text holds a character that nobody can see");
  public static final Fault UNFINISHED_MERGE =
      error("unfinished-merge", "a file holds two versions of the same lines");
  public static final Fault UNKNOWN_FORMAT =
      error("unknown-format", "the content is written for another version of the program");
  public static final Fault FILE_NAME_DIFFERS =
      error("file-name-differs", "a file's name differs from the id inside it");

  // YAML
  public static final Fault NOT_YAML = error("not-yaml", "a line cannot be read as YAML");
  public static final Fault TAB = error("tab-in-yaml", "there is a tab in a YAML file");
  public static final Fault CURLY_QUOTATION_MARK =
      error("curly-quotation-mark", "a curly quotation mark is where a straight one belongs");
  public static final Fault TEXT_CUT_SHORT =
      error("text-cut-short", "the sign '#' cuts off the end of a text");
  public static final Fault SEVERAL_DOCUMENTS =
      error("several-documents", "a YAML file holds more than one document");
  public static final Fault ALIAS =
      error("alias", "a YAML file uses an anchor, an alias or a merge key");
  public static final Fault TAG = error("tag", "a YAML file uses a tag");
  public static final Fault NESTED_TOO_DEEP =
      error("nested-too-deep", "a file nests its brackets or indents far too deep");

  // CSV
  public static final Fault NOT_CSV = error("not-csv", "a line cannot be read as CSV");
  public static final Fault UNKNOWN_COLUMN =
      error("unknown-column", "a header row names a column that the program does not know");
  public static final Fault MISSING_COLUMN = error("missing-column", "a header row lacks a column");

  // Keys and shapes
  public static final Fault WRITTEN_TWICE =
      error("written-twice", "a key or an id is written twice");
  public static final Fault UNKNOWN_KEY =
      error("unknown-key", "a key is not one that the program knows");
  public static final Fault MISSING_KEY = error("missing-key", "a key or a cell is missing");
  public static final Fault NO_VALUE = error("no-value", "a key has no value");
  public static final Fault WRONG_SHAPE =
      error(
          "wrong-shape",
          "there is a list, a group of keys or a single value where another belongs");

  // Values
  public static final Fault PLACE_TO_FILL =
      error("place-to-fill", "a value is still to be filled in");
  public static final Fault NOT_AN_ID = error("not-an-id", "a text is not an id");
  public static final Fault UNKNOWN_WORD =
      error("unknown-word", "a word is not one of those to choose from");
  public static final Fault NOT_A_QUANTITY =
      error("not-a-quantity", "a text is not a quantity with its unit");
  public static final Fault NOT_A_NUMBER = error("not-a-number", "a text is not a whole number");
  public static final Fault NOT_YES_OR_NO = error("not-yes-or-no", "a text is neither yes nor no");
  public static final Fault NOT_A_DATE = error("not-a-date", "a text is not a date");
  public static final Fault NO_SENSE =
      error("no-sense", "a text does not make sense as what it should be");
  public static final Fault TOO_LONG = error("too-long", "a text is far too long");

  // References and prose
  public static final Fault UNKNOWN_REFERENCE =
      error("unknown-reference", "a text names something that the content does not hold");
  public static final Fault AMBIGUOUS_REFERENCE =
      error("ambiguous-reference", "an id means two things at once");
  public static final Fault WRONG_LINK =
      error("wrong-link", "a link is of a kind that pages do not allow");
  public static final Fault RAW_HTML = error("raw-html", "a text holds HTML");
  public static final Fault UNUSABLE_MARKDOWN =
      error("unusable-markdown", "a text uses Markdown that pages do not print");
  public static final Fault MISSING_TITLE =
      error("missing-title", "a page of the handbook does not begin with its title");

  private ReadingFaults() {}

  /** Every kind of mistake that reading can meet, in the order of this list. */
  public static List<Fault> all() {
    return List.of(
        NO_CONTENT,
        UNREADABLE_FILE,
        LEADS_OUT,
        UNKNOWN_FILE,
        UNKNOWN_TEMPLATE,
        TOO_MANY_FILES,
        FILE_TOO_LARGE,
        EMPTY_FILE,
        NOT_UTF_8,
        HIDDEN_CHARACTER,
        UNFINISHED_MERGE,
        UNKNOWN_FORMAT,
        FILE_NAME_DIFFERS,
        NOT_YAML,
        TAB,
        CURLY_QUOTATION_MARK,
        TEXT_CUT_SHORT,
        SEVERAL_DOCUMENTS,
        ALIAS,
        TAG,
        NESTED_TOO_DEEP,
        NOT_CSV,
        UNKNOWN_COLUMN,
        MISSING_COLUMN,
        WRITTEN_TWICE,
        UNKNOWN_KEY,
        MISSING_KEY,
        NO_VALUE,
        WRONG_SHAPE,
        PLACE_TO_FILL,
        NOT_AN_ID,
        UNKNOWN_WORD,
        NOT_A_QUANTITY,
        NOT_A_NUMBER,
        NOT_YES_OR_NO,
        NOT_A_DATE,
        NO_SENSE,
        TOO_LONG,
        UNKNOWN_REFERENCE,
        AMBIGUOUS_REFERENCE,
        WRONG_LINK,
        RAW_HTML,
        UNUSABLE_MARKDOWN,
        MISSING_TITLE);
  }

  /** An item or a row that says the same as one before it. */
  static Problem repeated(SourceNode piece, Location earlier) {
    return WRITTEN_TWICE
        .at(
            piece.at(),
            (piece instanceof SourceNode.Scalar scalar ? Quote.of(scalar.text()) : "the same")
                + " is already in this list, "
                + (earlier.line() == piece.at().line()
                    ? "on this line"
                    : "on line " + earlier.line()))
        .note(earlier, "first written here")
        .help("remove one of the two, or correct it");
  }

  private static Fault error(String id, String summary) {
    return new Fault(id, Severity.ERROR, summary);
  }

  private static Fault warning(String id, String summary) {
    return new Fault(id, Severity.WARNING, summary);
  }
}
