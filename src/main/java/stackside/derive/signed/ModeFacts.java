package stackside.derive.signed;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stackside.model.ByLevel;
import stackside.model.CrestFactor;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.PublishedOutput;
import stackside.quantity.Quantity;

/** What a signature covers of a mode: all of it for its machine, one level of it for a setting. */
final class ModeFacts {
  private ModeFacts() {}

  /** The mode as a setting uses it: its limits and voltage at that level. */
  static FactList at(PedalSetting setting) {
    Mode mode = setting.mode().value();
    Optional<Level> level = setting.level().map(Fact::value);
    return common(mode)
        .quantity("rated-power", mode.ratedPower().flatMap(each -> each.at(level)))
        .quantity("current-limit", mode.currentLimit().flatMap(each -> each.at(level)))
        .quantity("peak-voltage", mode.peakVoltage().flatMap(each -> each.at(level)))
        .text(
            "crest-factor",
            mode.crestFactor().flatMap(each -> each.at(level)).map(ModeFacts::text));
  }

  /** The whole mode. */
  static FactList of(Mode mode) {
    FactList facts = common(mode);
    mode.ratedPower().ifPresent(each -> levels(facts, "rated-power", each, Quantity::text));
    mode.currentLimit().ifPresent(each -> levels(facts, "current-limit", each, Quantity::text));
    mode.peakVoltage().ifPresent(each -> levels(facts, "peak-voltage", each, Quantity::text));
    mode.crestFactor().ifPresent(each -> levels(facts, "crest-factor", each, CrestFactor::text));
    return facts.list("published", mode.published().stream().map(ModeFacts::of).toList());
  }

  private static Fact<String> text(Fact<CrestFactor> factor) {
    return new Fact<>(factor.value().text(), factor.at());
  }

  private static FactList common(Mode mode) {
    FactList facts =
        new FactList()
            .text("id", mode.id().local())
            .text("name", mode.name())
            .word("pedal", mode.pedal())
            .word("kind", mode.kind())
            .word("current", mode.current())
            .word("waveform", mode.waveform())
            .quantity("rated-load", mode.ratedLoad());
    mode.level().ifPresent(scale -> facts.members("levels", of(scale)));
    mode.powerLimit().ifPresent(range -> facts.text("power-limit", range.value().text()));
    mode.pulse()
        .ifPresent(
            pulse ->
                facts.members(
                    "pulse",
                    new FactList()
                        .quantity("on", pulse.on())
                        .quantity("every", pulse.every())
                        .flag("adjustable", pulse.adjustable())));
    return facts;
  }

  private static FactList of(LevelScale scale) {
    return new FactList()
        .text("name", scale.name())
        .list("all", scale.levels().stream().map(level -> Json.text(level.text())).toList());
  }

  private static <T> void levels(
      FactList facts, String name, ByLevel<T> values, Function<T, String> words) {
    FactList each = new FactList();
    values.all().ifPresent(all -> each.text("all", words.apply(all.value())));
    for (Map.Entry<Level, Fact<T>> entry : values.each().entrySet()) {
      each.text(entry.getKey().text(), words.apply(entry.getValue().value()));
    }
    facts.members(name, each);
  }

  private static Json.Members of(PublishedOutput published) {
    FactList facts = new FactList();
    published.level().ifPresent(level -> facts.text("level", level.value().text()));
    facts.quantity("limit", published.limit());
    List<Json> points =
        published.points().stream()
            .map(Fact::value)
            .map(point -> Json.text(point.load().text() + ": " + point.power().text()))
            .toList();
    return facts.list("points", points).json();
  }
}
