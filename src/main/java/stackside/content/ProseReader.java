package stackside.content;

import java.util.Optional;
import stackside.source.Location;

/** Reads the texts of one file that may hold Markdown. */
final class ProseReader {
  private static final int LONGEST = 20_000;

  private final Findings findings;
  private final Mentions mentions;
  private TextFile file;

  ProseReader(Findings findings, Mentions mentions) {
    this.findings = findings;
    this.mentions = mentions;
    this.file = TextFile.of("content", "");
  }

  /** Turns to the next file. */
  void open(TextFile next) {
    file = next;
  }

  Optional<Object> read(SourceNode.Scalar scalar, String key) {
    if (scalar.nothing()) {
      findings.add(
          ReadingFaults.NO_VALUE
              .at(scalar.at(), Quote.of(key) + " has no value")
              .help("write its value, or remove the key if it is optional"));
      return Optional.empty();
    }
    if (ScalarReader.isPlaceToFill(scalar.text())) {
      findings.add(ScalarReader.placeToFill(scalar.at(), key));
      return Optional.empty();
    }
    int hidden = HiddenCharacters.firstIn(scalar.text());
    if (hidden >= 0) {
      findings.add(HiddenCharacters.problem(scalar.text().codePointAt(hidden), scalar.at()));
      return Optional.empty();
    }
    if (scalar.text().length() > LONGEST) {
      findings.add(tooLong(scalar.at(), scalar.text().length()));
      return Optional.empty();
    }
    MarkdownReader reader = new MarkdownReader(TextPlaces.inYaml(file, scalar), findings, mentions);
    return Optional.of(reader.prose(scalar.at(), scalar.text()));
  }

  private static stackside.source.Problem tooLong(Location at, int length) {
    return ReadingFaults.TOO_LONG
        .at(at, "this text is " + length + " characters long")
        .help("keep it under " + LONGEST + " characters, or make it a page of the handbook");
  }
}
