package stackside.content;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Reads a YAML file into pieces. Texts stay as typed: YAML's own guesses at numbers, dates and
 * yes-or-no are never asked for. Aliases, tags and several documents are refused in words.
 */
final class YamlReader {
  private static final int DEEPEST = 50;
  private static final int MOST_PIECES = 100_000;

  private final TextFile file;
  private final Iterator<Event> events;
  private int pieces;

  /** Stops the reading of a file that cannot be understood any further. */
  private static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Unreadable(Problem problem) {
      super(problem.message());
      this.problem = problem;
    }
  }

  private YamlReader(TextFile file) {
    this.file = file;
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    options.setProcessComments(false);
    this.events = new Yaml(options).parse(new StringReader(file.text())).iterator();
  }

  /** The content of the file, or empty if a problem was reported. */
  static Optional<SourceNode> read(TextFile file, Findings findings) {
    try {
      refuseTabs(file);
      return Optional.of(new YamlReader(file).document());
    } catch (Unreadable e) {
      findings.add(e.problem);
    } catch (YAMLException e) {
      YamlMistake mistake = YamlMistake.in(file, e);
      findings.add(LooseText.culprit(file, mistake.lines()).orElseGet(mistake::problem));
    }
    return Optional.empty();
  }

  private static void refuseTabs(TextFile file) throws Unreadable {
    int tab = file.text().indexOf('\t');
    if (tab < 0) {
      return;
    }
    String before = file.text().substring(0, tab);
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    int column = tab - before.lastIndexOf('\n');
    throw new Unreadable(
        ReadingFaults.TAB
            .at(file.at(line, column, 1), "there is a tab here")
            .help("type spaces instead of every tab in this file"));
  }

  private SourceNode document() throws Unreadable {
    Event event = next();
    while (!(event instanceof NodeEvent)) {
      if (event.is(Event.ID.StreamEnd)) {
        throw empty();
      }
      event = next();
    }
    SourceNode piece = piece(event, 0);
    if (piece instanceof SourceNode.Scalar scalar && scalar.nothing()) {
      throw empty();
    }
    refuseFurtherDocuments();
    return piece;
  }

  private void refuseFurtherDocuments() throws Unreadable {
    while (events.hasNext()) {
      Event event = next();
      if (event instanceof DocumentStartEvent) {
        throw new Unreadable(
            ReadingFaults.SEVERAL_DOCUMENTS
                .at(
                    place(event.getStartMark(), event.getEndMark()),
                    "a second document begins here")
                .help("keep one document in a file, without lines of '---' between"));
      }
    }
  }

  private Unreadable empty() {
    return new Unreadable(
        ReadingFaults.EMPTY_FILE
            .at(Location.startOf(file.name()), "the file is empty")
            .help("write its content, or remove the file"));
  }

  private Event next() {
    return events.next();
  }

  private SourceNode piece(Event event, int depth) throws Unreadable {
    if (depth > DEEPEST) {
      throw new Unreadable(
          ReadingFaults.NESTED_TOO_DEEP
              .at(start(event), "lists or groups nest more than " + DEEPEST + " deep here")
              .help("look for brackets that are not closed"));
    }
    if (++pieces > MOST_PIECES) {
      throw new Unreadable(
          ReadingFaults.FILE_TOO_LARGE
              .at(start(event), "the file holds more than " + MOST_PIECES + " keys and values")
              .help("look for something pasted into it by mistake"));
    }
    if (event instanceof AliasEvent alias) {
      return refused(alias, ReadingFaults.ALIAS.at(whole(alias), "there is an alias here"));
    }
    SourceNode piece = content(event, depth);
    return event instanceof NodeEvent node ? unlessMarked(node, piece) : piece;
  }

  private SourceNode content(Event event, int depth) throws Unreadable {
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar);
    }
    if (event instanceof SequenceStartEvent start) {
      return sequence(start, depth);
    }
    if (event instanceof MappingStartEvent start) {
      return mapping(start, depth);
    }
    throw new IllegalStateException("no content can begin with " + event);
  }

  private SourceNode unlessMarked(NodeEvent event, SourceNode piece) {
    if (event.getAnchor() != null) {
      return refused(event, ReadingFaults.ALIAS.at(start(event), "there is an anchor here"));
    }
    String tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : event instanceof MappingStartEvent mapping
                ? mapping.getTag()
                : event instanceof SequenceStartEvent sequence ? sequence.getTag() : null;
    if (tag == null) {
      return piece;
    }
    Problem problem =
        ReadingFaults.TAG
            .at(start(event), "there is a tag here")
            .help("remove the word that begins with '!', or put the text in quotes");
    return new SourceNode.Refused(problem.at(), problem);
  }

  private SourceNode.Refused refused(NodeEvent event, Problem problem) {
    String mark = event instanceof AliasEvent ? "'*'" : "'&'";
    Problem complete =
        problem.help("write the value out, or put a text that begins with " + mark + " in quotes");
    return new SourceNode.Refused(problem.at(), complete);
  }

  private SourceNode.Scalar scalar(ScalarEvent event) {
    SourceNode.Style style =
        switch (event.getScalarStyle()) {
          case LITERAL -> SourceNode.Style.LITERAL;
          case FOLDED -> SourceNode.Style.FOLDED;
          case DOUBLE_QUOTED, SINGLE_QUOTED -> SourceNode.Style.QUOTED;
          default -> SourceNode.Style.PLAIN;
        };
    return new SourceNode.Scalar(
        whole(event), event.getValue(), style, event.getEndMark().getLine() + 1);
  }

  /** The text, unless it is not all that its author wrote. */
  private SourceNode unlessLoose(SourceNode piece, Event event) {
    if (!(piece instanceof SourceNode.Scalar scalar) || scalar.style() != SourceNode.Style.PLAIN) {
      return piece;
    }
    Location end = place(event.getEndMark(), event.getEndMark());
    Optional<Problem> loose = LooseText.problem(file, scalar, end);
    return loose.isPresent() ? new SourceNode.Refused(scalar.at(), loose.orElseThrow()) : scalar;
  }

  private SourceNode.Sequence sequence(SequenceStartEvent start, int depth) throws Unreadable {
    List<SourceNode> items = new ArrayList<>();
    Event event = next();
    while (!(event instanceof SequenceEndEvent)) {
      items.add(unlessLoose(piece(event, depth + 1), event));
      event = next();
    }
    Location at = collection(start.isFlow(), start, event, List.of());
    List<SourceNode> whole = items.stream().map(TornText::withoutPair).toList();
    return new SourceNode.Sequence(at, start.isFlow() ? TornText.joined(file, whole) : whole);
  }

  private SourceNode.Mapping mapping(MappingStartEvent start, int depth) throws Unreadable {
    List<SourceNode.Entry> entries = new ArrayList<>();
    Event event = next();
    while (!(event instanceof MappingEndEvent)) {
      SourceNode key = piece(event, depth + 1);
      Event value = next();
      entries.add(entry(key, unlessLoose(piece(value, depth + 1), value)));
      event = next();
    }
    Location at = collection(start.isFlow(), start, event, entries);
    return new SourceNode.Mapping(at, start.isFlow() ? TornText.rejoined(file, entries) : entries);
  }

  private static SourceNode.Entry entry(SourceNode key, SourceNode value) {
    if (key instanceof SourceNode.Scalar name
        && name.style() == SourceNode.Style.PLAIN
        && CurlyMarks.begin(name.text())) {
      return new SourceNode.Entry(
          nameless(key), new SourceNode.Refused(key.at(), CurlyMarks.problem(key.at())));
    }
    if (key instanceof SourceNode.Scalar name) {
      return new SourceNode.Entry(name, name.text().equals("<<") ? mergeKey(name) : value);
    }
    Problem problem =
        key.refusal()
            .orElseGet(
                () ->
                    ReadingFaults.WRONG_SHAPE
                        .at(key.at(), "a key is a single word, and this is a list or a group")
                        .help("look for a bracket that is too early"));
    return new SourceNode.Entry(nameless(key), new SourceNode.Refused(key.at(), problem));
  }

  private static SourceNode.Scalar nameless(SourceNode key) {
    return new SourceNode.Scalar(key.at(), "", SourceNode.Style.PLAIN, key.at().line());
  }

  private static SourceNode.Refused mergeKey(SourceNode.Scalar name) {
    Problem problem =
        ReadingFaults.ALIAS
            .at(name.at(), "there is a merge key here")
            .help("write the keys out where they belong");
    return new SourceNode.Refused(name.at(), problem);
  }

  /** A flow collection from bracket to bracket. Of a block one, its first line. */
  private Location collection(
      boolean flow, Event start, Event end, List<SourceNode.Entry> entries) {
    if (flow) {
      return place(start.getStartMark(), end.getEndMark());
    }
    Location from = start(start);
    if (entries.isEmpty()) {
      return from;
    }
    Location key = entries.get(0).key().at();
    Location value = entries.get(0).value().at();
    Location last = value.line() == key.line() ? value : key;
    return file.at(key.line(), key.column(), last.column() + last.length() - key.column());
  }

  private Location start(Event event) {
    Location from = place(event.getStartMark(), event.getStartMark());
    return file.at(from.line(), from.column(), 1);
  }

  private Location whole(Event event) {
    if (event instanceof ScalarEvent scalar && (scalar.isLiteral() || scalar.isFolded())) {
      return start(event);
    }
    return place(event.getStartMark(), event.getEndMark());
  }

  private Location place(Mark from, Mark to) {
    return YamlMistake.place(file, from, to);
  }
}
