package stackside.content;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stackside.model.AppliesTo;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.UnitDetails;
import stackside.model.UnreadableText;
import stackside.quantity.UnreadableQuantity;
import stackside.source.Location;

/**
 * Binds a group of keys to a record of the model by the types of its components. Whatever has an id
 * is put into the scope, whole or broken, as soon as it is read.
 */
final class RecordBinder {
  private static final int RUN_TOGETHER = 3;

  private final Map<Class<?>, RecordForm> forms = new HashMap<>();
  private final Findings findings;
  private final SymbolTable scope;
  private final ValueBinder values;
  private final ThingRegister register;

  RecordBinder(Findings findings, SymbolTable scope, ValueBinder values) {
    this.findings = findings;
    this.scope = scope;
    this.values = values;
    this.register = new ThingRegister(findings, scope);
  }

  RecordForm form(Class<?> type) {
    return forms.computeIfAbsent(type, RecordForm::of);
  }

  /** The record, or empty if it or something that it needs is broken. */
  Optional<Object> bind(Class<?> type, SourceNode piece, BindingContext frame) {
    return Thing.class.isAssignableFrom(type)
        ? bindThing(type, piece, frame)
        : bindPart(type, piece, frame);
  }

  private Optional<Object> bindPart(Class<?> type, SourceNode piece, BindingContext frame) {
    return mapping(piece, frame)
        .flatMap(mapping -> new Filling(form(type), mapping, Optional.empty()).fill(frame));
  }

  private Optional<Object> bindThing(Class<?> type, SourceNode piece, BindingContext frame) {
    int mark = findings.mark();
    int inside = scope.mark();
    Optional<SourceNode.Mapping> mapping = mapping(piece, frame);
    Optional<Fact<ThingId>> id = register.id(form(type), mapping, frame);
    Optional<Object> bound =
        mapping.flatMap(
            each ->
                new Filling(form(type), each, id.map(Fact::value)).fill(inside(type, id, frame)));
    if (id.isEmpty()) {
      scope.breakSince(inside);
      return Optional.empty();
    }
    Optional<Thing> whole =
        bound.map(Thing.class::cast).filter(any -> findings.errorsSince(mark).isEmpty());
    if (whole.isEmpty()) {
      scope.breakSince(inside);
    }
    return register
        .put(id.orElseThrow(), piece.at(), whole, findings.errorsSince(mark))
        .map(each -> each);
  }

  private static BindingContext inside(
      Class<?> type, Optional<Fact<ThingId>> id, BindingContext frame) {
    return type == Machine.class ? frame.in(id.map(Fact::value)) : frame;
  }

  private Optional<SourceNode.Mapping> mapping(SourceNode piece, BindingContext frame) {
    if (piece instanceof SourceNode.Mapping mapping) {
      return Optional.of(mapping);
    }
    values.refuseShape(piece, frame, Shape.GROUP);
    return Optional.empty();
  }

  /** One record while its keys become components. */
  private final class Filling {
    private final RecordForm form;
    private final SourceNode.Mapping mapping;
    private final Optional<ThingId> id;
    private final Map<String, SourceNode> written = new HashMap<>();
    private final Set<String> meant = new HashSet<>();
    private boolean whole = true;

    Filling(RecordForm form, SourceNode.Mapping mapping, Optional<ThingId> id) {
      this.form = form;
      this.mapping = mapping;
      this.id = id;
    }

    Optional<Object> fill(BindingContext outside) {
      readKeys();
      BindingContext frame = outside;
      List<Object> components = new ArrayList<>();
      for (RecordForm.Slot slot : form.slots()) {
        Optional<Object> value = component(slot, frame);
        value.ifPresentOrElse(components::add, () -> whole = false);
        frame = machineOf(value, frame);
      }
      return whole ? construct(components) : Optional.empty();
    }

    private void readKeys() {
      Map<String, Location> first = new HashMap<>();
      List<SourceNode.Scalar> again = new ArrayList<>();
      List<SourceNode.Scalar> unknown = new ArrayList<>();
      for (SourceNode.Entry entry : mapping.entries()) {
        String key = entry.key().text();
        Location earlier = first.putIfAbsent(key, entry.key().at());
        if (entry.value() instanceof SourceNode.Refused refused && form.slot(key).isEmpty()) {
          findings.add(refused.problem());
          meant.addAll(form.keys());
        } else if (earlier != null) {
          again.add(entry.key());
        } else if (form.slot(key).isEmpty()) {
          unknown.add(entry.key());
        } else {
          written.put(key, entry.value());
        }
      }
      if (again.size() >= RUN_TOGETHER) {
        runTogether(again, first.getOrDefault(again.get(0).text(), mapping.at()));
      } else {
        again.forEach(key -> writtenTwice(key, first.getOrDefault(key.text(), mapping.at())));
      }
      unknown.forEach(this::unknownKey);
    }

    /** So many keys at once come from a lost line between two items of a list. */
    private void runTogether(List<SourceNode.Scalar> again, Location first) {
      findings.add(
          ReadingFaults.WRITTEN_TWICE
              .at(
                  again.get(0).at(),
                  "%s and %s more keys are written twice"
                      .formatted(Quote.of(again.get(0).text()), again.size() - 1))
              .note(first, "first written here")
              .help(
                  "if these are two items of a list, give the second its own line with '-' again"));
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

    private void unknownKey(SourceNode.Scalar key) {
      List<String> free =
          form.keys().stream().filter(known -> !written.containsKey(known)).toList();
      List<String> near = NearNames.of(key.text(), free);
      meant.addAll(near);
      findings.add(
          ReadingFaults.UNKNOWN_KEY
              .at(key.at(), "unknown key " + Quote.of(key.text()))
              .help(near.isEmpty() ? otherHelp(key) : NearNames.question(near)));
    }

    private String otherHelp(SourceNode.Scalar key) {
      return key.text().strip().contains(" ")
          ? "put a text with a comma or a colon in it in quotes"
          : "the keys here are " + String.join(", ", form.keys());
    }

    private Optional<Object> component(RecordForm.Slot slot, BindingContext frame) {
      if (slot.need() == RecordForm.Need.PLACE) {
        return Optional.of(mapping.at());
      }
      if (slot.type() == ThingId.class && Thing.class.isAssignableFrom(form.type())) {
        return id.map(each -> each);
      }
      SourceNode value = written.get(slot.key());
      if (value == null) {
        return missing(slot);
      }
      BindingContext inner = frame.under(slot.key());
      Optional<Object> bound =
          form.type() == UnitDetails.class || form.type().isAnnotationPresent(WholeFile.class)
              ? values.bindWithoutBroken(slot.type(), value, inner)
              : values.bind(slot.type(), value, inner);
      if (slot.need() == RecordForm.Need.AT_LEAST_ONE && value.isEmpty()) {
        findings.add(
            ReadingFaults.NO_VALUE
                .at(value.at(), Quote.of(slot.key()) + " is empty")
                .help("write at least one"));
        return Optional.empty();
      }
      return slot.need() == RecordForm.Need.OPTIONAL ? bound.map(Optional::of) : bound;
    }

    private Optional<Object> missing(RecordForm.Slot slot) {
      return switch (slot.need()) {
        case OPTIONAL -> Optional.of(Optional.empty());
        case EMPTY_LIST -> Optional.of(List.of());
        case EMPTY_MAP -> Optional.of(Map.of());
        case ALL -> Optional.of(new AppliesTo(mapping.at(), List.of()));
        case PLACE, REQUIRED, AT_LEAST_ONE -> {
          if (!meant.contains(slot.key())) {
            findings.add(
                ReadingFaults.MISSING_KEY
                    .at(mapping.at(), Quote.of(slot.key()) + " is missing")
                    .help("add the key " + Quote.of(slot.key()) + " with its value"));
          }
          yield Optional.empty();
        }
      };
    }

    private BindingContext machineOf(Optional<Object> value, BindingContext frame) {
      if (value.isPresent() && value.orElseThrow() instanceof Fact<?> fact) {
        if (fact.value() instanceof Machine machine) {
          return frame.in(Optional.of(machine.id()));
        }
        if (fact.value() instanceof Asset asset) {
          return frame.in(Optional.of(asset.machine().value().id()));
        }
      }
      return frame;
    }

    private Optional<Object> construct(List<Object> components) {
      Constructor<?> constructor = form.constructor();
      try {
        return Optional.of(constructor.newInstance(components.toArray()));
      } catch (InvocationTargetException e) {
        if (e.getCause() instanceof UnreadableText text) {
          findings.add(ReadingFaults.NO_SENSE.at(mapping.at(), text.problem()).help(text.hint()));
          return Optional.empty();
        }
        if (e.getCause() instanceof UnreadableQuantity text) {
          findings.add(
              ReadingFaults.NOT_A_QUANTITY.at(mapping.at(), text.problem()).help(text.hint()));
          return Optional.empty();
        }
        throw new IllegalStateException(form.type() + " refuses " + components, e);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(form.type() + " cannot be made", e);
      }
    }
  }
}
