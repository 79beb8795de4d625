package stackside.content;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.Utf8;

/** Turns the bytes of a file into text, or says in words why that is not possible. */
final class Decoder {
  private static final int MOST_REPORTED = 5;

  /** Longer lines would take the readers far too long. The longest text is shorter. */
  private static final int LONGEST_LINE = 25_000;

  private final Findings findings;

  /** The text, and whether every character of it may be used. */
  record Decoded(TextFile file, boolean usable) {}

  Decoder(Findings findings) {
    this.findings = findings;
  }

  /** Decodes a file. Even unusable text has lines that messages can show. */
  Decoded decode(String name, byte[] bytes) {
    if (looksLikeUtf16(bytes)) {
      findings.add(
          ReadingFaults.NOT_UTF_8
              .at(Location.startOf(name), "the file is saved as UTF-16, not as UTF-8")
              .help("save it again with the encoding UTF-8"));
      return new Decoded(TextFile.of(name, ""), false);
    }
    Optional<String> text = Utf8.text(bytes);
    if (text.isEmpty()) {
      TextFile loose = TextFile.of(name, plain(new String(bytes, StandardCharsets.UTF_8)));
      reportFirstBadByte(loose);
      return new Decoded(loose, false);
    }
    TextFile file = TextFile.of(name, plain(text.orElseThrow()));
    return new Decoded(
        file, allVisible(file) && notEmpty(file) && noEndlessLine(file) && merged(file));
  }

  private static boolean looksLikeUtf16(byte[] bytes) {
    if (bytes.length < 2) {
      return false;
    }
    int first = bytes[0] & 0xFF;
    int second = bytes[1] & 0xFF;
    boolean marked = (first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE);
    return marked || (first == 0) != (second == 0);
  }

  private static String plain(String text) {
    String withoutMark = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return withoutMark.replace("\r\n", "\n").replace('\r', '\n');
  }

  private void reportFirstBadByte(TextFile loose) {
    List<String> lines = loose.source().lines();
    int line = 0;
    while (line < lines.size() - 1 && lines.get(line).indexOf('\uFFFD') < 0) {
      line++;
    }
    int column = Math.max(0, lines.get(line).indexOf('\uFFFD'));
    findings.add(
        ReadingFaults.NOT_UTF_8
            .at(loose.at(line + 1, column + 1, 1), "a character here is not saved as UTF-8")
            .help("save the file again with the encoding UTF-8"));
  }

  private boolean notEmpty(TextFile file) {
    if (!file.text().isBlank() || Layout.mayBeEmpty(file.name())) {
      return true;
    }
    findings.add(
        ReadingFaults.EMPTY_FILE
            .at(Location.startOf(file.name()), "the file is empty")
            .help("write its content, or remove the file"));
    return false;
  }

  private boolean merged(TextFile file) {
    List<Problem> unfinished = MergeMarks.in(file);
    unfinished.forEach(findings::add);
    return unfinished.isEmpty();
  }

  private boolean noEndlessLine(TextFile file) {
    List<String> lines = file.source().lines();
    for (int line = 0; line < lines.size(); line++) {
      int length = lines.get(line).length();
      if (length > LONGEST_LINE) {
        findings.add(
            ReadingFaults.TOO_LONG
                .at(file.at(line + 1, 1, 1), "this line is " + length + " characters long")
                .help("look for something pasted into it by mistake"));
        return false;
      }
    }
    return true;
  }

  private boolean allVisible(TextFile file) {
    List<Location> hidden = new ArrayList<>();
    List<String> lines = file.source().lines();
    for (int line = 0; line < lines.size() && hidden.size() < MOST_REPORTED; line++) {
      int column = HiddenCharacters.firstIn(lines.get(line));
      if (column >= 0) {
        hidden.add(file.at(line + 1, column + 1, 1));
        findings.add(
            HiddenCharacters.problem(
                lines.get(line).codePointAt(column), file.at(line + 1, column + 1, 1)));
      }
    }
    return hidden.isEmpty();
  }
}
