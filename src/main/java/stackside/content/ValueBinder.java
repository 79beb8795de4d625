package stackside.content;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import stackside.model.ByLevel;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Prose;
import stackside.model.PublishedOutput;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Word;
import stackside.source.Location;

/** Binds a piece to a value of the type that a component asks for. */
final class ValueBinder {
  private final Findings findings;
  private final RecordBinder records;
  private final ScalarReader scalars;
  private final References references;
  private final OwnForms ownForms;
  private final ProseReader prose;
  private final Mentions mentions;

  ValueBinder(Findings findings, SymbolTable scope, Mentions mentions, ProseReader prose) {
    this.findings = findings;
    this.records = new RecordBinder(findings, scope, this);
    this.scalars = new ScalarReader(findings);
    this.references = new References(scope, findings);
    this.ownForms = new OwnForms(findings, this, mentions);
    this.prose = prose;
    this.mentions = mentions;
  }

  RecordBinder records() {
    return records;
  }

  References references() {
    return references;
  }

  /** The value, or empty if it could not be bound. Its problems are reported. */
  Optional<Object> bind(Type type, SourceNode piece, BindingContext frame) {
    if (piece instanceof SourceNode.Refused refused) {
      findings.add(refused.problem());
      return Optional.empty();
    }
    if (type instanceof ParameterizedType generic) {
      return generic(generic, piece, frame);
    }
    Class<?> plain = (Class<?>) type;
    if (plain == SourceNode.class) {
      return Optional.of(piece);
    }
    if (plain == Prose.class) {
      return scalar(piece, frame).flatMap(text -> prose.read(text, frame.key()));
    }
    if (scalars.reads(plain)) {
      return scalar(piece, frame).flatMap(text -> scalars.read(plain, text, frame.key()));
    }
    return ownForms.has(plain)
        ? ownForms.bind(plain, piece, frame)
        : records.bind(plain, piece, frame);
  }

  /** A list or map without those of its items that are broken. */
  Optional<Object> bindWithoutBroken(Type type, SourceNode piece, BindingContext frame) {
    if (type instanceof ParameterizedType generic) {
      Type[] arguments = generic.getActualTypeArguments();
      if (generic.getRawType() == List.class && piece instanceof SourceNode.Sequence sequence) {
        refuseRepetitions(arguments[0], sequence);
        return Optional.of(present(items(arguments[0], sequence.items(), frame)));
      }
      if (generic.getRawType() == Map.class) {
        return mapWithoutBroken(generic, piece, frame);
      }
    }
    return bind(type, piece, frame);
  }

  private Optional<Object> mapWithoutBroken(
      ParameterizedType type, SourceNode piece, BindingContext frame) {
    if (!(piece instanceof SourceNode.Mapping mapping)) {
      return bind(type, piece, frame);
    }
    Type[] arguments = type.getActualTypeArguments();
    return Optional.of(
        entries(
                arguments[0],
                mapping,
                frame,
                each ->
                    bindWithoutBroken(arguments[1], each.value(), frame.under(each.key().text())))
            .whole());
  }

  private static List<Object> present(List<Optional<Object>> items) {
    return items.stream().flatMap(Optional::stream).toList();
  }

  private Optional<Object> generic(ParameterizedType type, SourceNode piece, BindingContext frame) {
    Type[] arguments = type.getActualTypeArguments();
    if (type.getRawType() == Fact.class) {
      return fact(arguments[0], piece, frame).map(each -> each);
    }
    if (type.getRawType() == List.class) {
      return list(arguments[0], piece, frame);
    }
    if (type.getRawType() == Map.class) {
      return map(arguments[0], arguments[1], piece, frame);
    }
    if (type.getRawType() == ByLevel.class) {
      return byLevel(arguments[0], piece, frame);
    }
    throw new IllegalStateException("nobody knows how to bind " + type);
  }

  /** A value with its place. */
  Optional<Fact<Object>> fact(Type type, SourceNode piece, BindingContext frame) {
    if (piece instanceof SourceNode.Refused refused) {
      findings.add(refused.problem());
      return Optional.empty();
    }
    return factValue(type, piece, frame).map(value -> new Fact<>(value, piece.at()));
  }

  private Optional<Object> factValue(Type type, SourceNode piece, BindingContext frame) {
    if (type instanceof Class<?> plain && ownForms.has(plain)) {
      return ownForms.bind(plain, piece, frame);
    }
    return scalar(piece, frame).flatMap(scalar -> scalarValue(type, scalar, frame));
  }

  private Optional<Object> scalarValue(Type type, SourceNode.Scalar scalar, BindingContext frame) {
    if (type == ThingId.class) {
      return scalars
          .read(String.class, scalar, frame.key())
          .flatMap(text -> mentions.read((String) text, scalar.at()))
          .map(id -> id);
    }
    if (type instanceof Class<?> plain && Thing.class.isAssignableFrom(plain)) {
      return scalars
          .read(String.class, scalar, frame.key())
          .flatMap(text -> references.resolve(plain, (String) text, scalar.at(), frame));
    }
    return scalars.read(type, scalar, frame.key());
  }

  Optional<SourceNode.Scalar> scalar(SourceNode piece, BindingContext frame) {
    if (piece instanceof SourceNode.Scalar scalar) {
      return Optional.of(scalar);
    }
    refuseShape(piece, frame, Shape.VALUE);
    return Optional.empty();
  }

  /** Reports a piece of another shape than its key takes. */
  void refuseShape(SourceNode piece, BindingContext frame, Shape wanted) {
    if (piece.refusal().isPresent()) {
      findings.add(piece.refusal().orElseThrow());
    } else if (piece instanceof SourceNode.Scalar scalar && scalar.nothing()) {
      findings.add(
          ReadingFaults.NO_VALUE
              .at(piece.at(), frame.words() + " has no value")
              .help(wanted.help()));
    } else {
      findings.add(
          ReadingFaults.WRONG_SHAPE
              .at(piece.at(), frame.words() + wanted.message())
              .help(wanted.help()));
    }
  }

  private Optional<Object> list(Type item, SourceNode piece, BindingContext frame) {
    if (isSingle(item, piece)) {
      return bind(item, piece, frame).map(List::of);
    }
    if (!(piece instanceof SourceNode.Sequence sequence)) {
      refuseShape(piece, frame, Shape.LIST);
      return Optional.empty();
    }
    refuseTwins(item, sequence);
    refuseRepetitions(item, sequence);
    List<Optional<Object>> items = items(item, sequence.items(), frame);
    return items.stream().allMatch(Optional::isPresent)
        ? Optional.of(present(items))
        : Optional.empty();
  }

  /** If a machine puts out only one thing, it may be written without a list. */
  private static boolean isSingle(Type item, SourceNode piece) {
    return item == PublishedOutput.class && piece instanceof SourceNode.Mapping;
  }

  /**
   * Reports an item that says the same as an earlier one. Two things of one id are another mistake,
   * and a place that is still to be filled is reported as that.
   */
  private void refuseRepetitions(Type item, SourceNode.Sequence sequence) {
    if (item instanceof Class<?> type
        && type.isRecord()
        && !ownForms.has(type)
        && records.form(type).slot("id").isPresent()) {
      return;
    }
    Map<String, Location> first = new HashMap<>();
    for (SourceNode piece : sequence.items()) {
      String words = piece.words();
      Location earlier = first.putIfAbsent(words, piece.at());
      if (earlier != null && !words.isBlank() && !ScalarReader.isPlaceToFill(words)) {
        findings.add(ReadingFaults.repeated(piece, earlier));
      }
    }
  }

  private List<Optional<Object>> items(Type type, List<SourceNode> pieces, BindingContext frame) {
    List<Optional<Object>> items = new ArrayList<>();
    for (SourceNode piece : pieces) {
      items.add(bind(type, piece, frame.item()));
    }
    return items;
  }

  /** Two items of one id, if the id belongs to no thing and so is not kept in the scope. */
  private void refuseTwins(Type item, SourceNode.Sequence sequence) {
    if (!(item instanceof Class<?> type)
        || !type.isRecord()
        || Thing.class.isAssignableFrom(type)
        || records.form(type).slot("id").isEmpty()) {
      return;
    }
    Map<String, Location> first = new HashMap<>();
    for (SourceNode piece : sequence.items()) {
      if (piece instanceof SourceNode.Mapping mapping) {
        mapping.entries().stream()
            .filter(entry -> entry.key().text().equals("id"))
            .map(SourceNode.Entry::value)
            .filter(SourceNode.Scalar.class::isInstance)
            .map(SourceNode.Scalar.class::cast)
            .forEach(id -> refuseTwin(id, first.putIfAbsent(id.text(), id.at())));
      }
    }
  }

  private void refuseTwin(SourceNode.Scalar id, @Nullable Location earlier) {
    if (earlier != null) {
      findings.add(
          ReadingFaults.WRITTEN_TWICE
              .at(
                  id.at(),
                  "duplicate id " + Quote.of(id.text()) + ", first on line " + earlier.line())
              .note(earlier, "the first of this id")
              .help("give one of the two another id, or remove it"));
    }
  }

  /** The result of reading a map: its entries that are whole, and whether these are all. */
  private record Entries(Map<Object, Object> whole, int written) {}

  private Optional<Object> map(Type key, Type value, SourceNode piece, BindingContext frame) {
    if (!(piece instanceof SourceNode.Mapping mapping)) {
      refuseShape(piece, frame, Shape.GROUP);
      return Optional.empty();
    }
    Entries entries = entries(key, value, mapping, frame);
    return entries.whole().size() == entries.written()
        ? Optional.of(entries.whole())
        : Optional.empty();
  }

  private Entries entries(Type key, Type value, SourceNode.Mapping mapping, BindingContext frame) {
    return entries(
        key, mapping, frame, each -> bind(value, each.value(), frame.under(each.key().text())));
  }

  private Entries entries(
      Type key,
      SourceNode.Mapping mapping,
      BindingContext frame,
      Function<SourceNode.Entry, Optional<?>> value) {
    Map<Object, Object> whole = new LinkedHashMap<>();
    Map<String, Location> first = new HashMap<>();
    for (SourceNode.Entry entry : mapping.entries()) {
      Location earlier = first.putIfAbsent(entry.key().text(), entry.key().at());
      if (earlier != null) {
        writtenTwice(entry.key(), earlier);
        continue;
      }
      Optional<Object> name = mapKey(key, entry, frame);
      Optional<?> bound = value.apply(entry);
      if (name.isPresent() && bound.isPresent()) {
        whole.put(name.orElseThrow(), bound.orElseThrow());
      }
    }
    return new Entries(whole, mapping.entries().size());
  }

  private void writtenTwice(SourceNode.Scalar key, Location earlier) {
    findings.add(
        ReadingFaults.WRITTEN_TWICE
            .at(
                key.at(),
                "duplicate key " + Quote.of(key.text()) + ", first on line " + earlier.line())
            .note(earlier, "first written here")
            .help("keep one of the two lines"));
  }

  private Optional<Object> mapKey(Type type, SourceNode.Entry entry, BindingContext frame) {
    SourceNode.Scalar key = entry.key();
    if (entry.value() instanceof SourceNode.Refused) {
      return Optional.empty(); // reported with its value
    }
    Class<?> plain = (Class<?>) type;
    if (!plain.isEnum()) {
      return scalars.read(plain, key, frame.key());
    }
    List<Word> words = ScalarReader.words(plain);
    Optional<Word> chosen =
        words.stream().filter(word -> word.word().equals(key.text())).findFirst();
    if (chosen.isEmpty()) {
      List<String> names = words.stream().map(Word::word).toList();
      findings.add(
          ReadingFaults.UNKNOWN_KEY
              .at(key.at(), "unknown key " + Quote.of(key.text()) + " in " + frame.words())
              .help(
                  NearNames.questionOr(
                      "the keys here are " + String.join(", ", names), key.text(), names)));
    }
    return chosen.map(word -> word);
  }

  private Optional<Object> byLevel(Type type, SourceNode piece, BindingContext frame) {
    if (!(piece instanceof SourceNode.Mapping mapping)) {
      return fact(type, piece, frame)
          .map(fact -> new ByLevel<>(piece.at(), Optional.of(fact), Map.of()));
    }
    if (mapping.isEmpty()) {
      findings.add(
          ReadingFaults.NO_VALUE
              .at(mapping.at(), frame.words() + " has no value")
              .help("write one value, or one for each level"));
      return Optional.empty();
    }
    Entries entries = entries(Level.class, mapping, frame, each -> fact(type, each.value(), frame));
    Map<Level, Fact<Object>> each = new LinkedHashMap<>();
    entries.whole().forEach((level, fact) -> each.put((Level) level, asFact(fact)));
    return each.size() == entries.written()
        ? Optional.of(new ByLevel<>(piece.at(), Optional.empty(), each))
        : Optional.empty();
  }

  @SuppressWarnings("unchecked") // bound as a fact just before
  private static Fact<Object> asFact(Object fact) {
    return (Fact<Object>) fact;
  }
}
