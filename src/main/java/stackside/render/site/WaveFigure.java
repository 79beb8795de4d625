package stackside.render.site;

import java.util.List;
import java.util.Optional;
import stackside.derive.figure.ModeWave;
import stackside.model.Level;
import stackside.model.Mode;
import stackside.model.PulseTiming;
import stackside.quantity.PeakVolts;
import stackside.render.Numbers;
import stackside.render.SettingWords;
import stackside.render.Sheet;
import stackside.render.WaveDrawing;
import stackside.render.WaveDrawing.Rhythm;
import stackside.render.WaveDrawing.Strip;
import stackside.render.site.Part.Grid;

/** Waveforms of modes at one effective voltage, drawn from their crest factors and timing. */
final class WaveFigure {
  private WaveFigure() {}

  static List<Part> parts(List<Mode> modes, String id, PageContext here) {
    List<ModeWave> waves =
        modes.stream()
            .flatMap(mode -> ModeWave.of(mode, here.site().analysis().outputs()).stream())
            .toList();
    if (waves.isEmpty()) {
      return List.of();
    }
    WaveDrawing.Plan plan =
        new WaveDrawing.Plan(
            here.say("figure.waves.title"),
            here.say("figure.waves.caption"),
            waves.stream().map(wave -> strip(wave, here)).toList());
    return List.of(
        here.figure(
            id,
            WaveDrawing.of(plan, Sheet.PAGE),
            WaveDrawing.of(plan, Sheet.PHONE),
            Optional.empty()),
        new Grid(
                here.say("figure.waves.title"),
                List.of(
                    here.say("column.mode"),
                    here.say("column.crest-factor"),
                    here.say("figure.waves.share"),
                    here.say("figure.waves.rhythm"),
                    here.say("column.peak-voltage")),
                waves.stream().map(wave -> row(wave, here)).toList())
            .byColumn(),
        new Part.Say(RichLine.of(here.say("figure.waves.source"))),
        new Part.Say(RichLine.of(here.say("figure.learning"))));
  }

  private static Strip strip(ModeWave wave, PageContext here) {
    return new Strip(
        named(wave),
        here.say("figure.waves.crest", crest(wave, here)),
        wave.crest(),
        wave.pulse()
            .map(
                pulse ->
                    new Rhythm(pulse.on().value(), pulse.every().value(), rhythm(pulse, here))));
  }

  private static String named(ModeWave wave) {
    return wave.mode().title()
        + wave.level().map(level -> ", " + SettingWords.level(wave.mode(), level)).orElse("");
  }

  private static String crest(ModeWave wave, PageContext here) {
    return Numbers.number(wave.crest().factor())
        + " "
        + here.say(wave.withinBurst() ? "figure.waves.within-burst" : "figure.waves.over-cycle");
  }

  private static String rhythm(PulseTiming pulse, PageContext here) {
    return here.say(
        "figure.waves.pulse",
        Numbers.brief(pulse.on().value()),
        Numbers.brief(pulse.every().value()));
  }

  private static Grid.GridRow row(ModeWave wave, PageContext here) {
    return Grid.GridRow.of(
        here.link(wave.mode(), named(wave)),
        RichLine.of(crest(wave, here)),
        RichLine.of(Numbers.digits(100 * wave.letThrough().share(), 2) + Numbers.BOUND + "%"),
        RichLine.of(
            wave.pulse().map(pulse -> rhythm(pulse, here)).orElse(here.say("figure.waves.none"))),
        RichLine.of(peak(wave, here)));
  }

  /** The peak at the level drawn; if one factor applies to all levels, from first to last. */
  private static String peak(ModeWave wave, PageContext here) {
    List<PeakVolts> peaks =
        levels(wave).stream()
            .flatMap(level -> wave.mode().peakVoltage().flatMap(volts -> volts.at(level)).stream())
            .map(fact -> fact.value())
            .toList();
    if (peaks.isEmpty()) {
      return here.say("unknown");
    }
    PeakVolts first = peaks.get(0);
    PeakVolts last = peaks.get(peaks.size() - 1);
    return first.equals(last)
        ? Numbers.text(first)
        : here.say("figure.waves.peaks", Numbers.text(first), Numbers.text(last));
  }

  private static List<Optional<Level>> levels(ModeWave wave) {
    if (wave.level().isPresent() || wave.mode().level().isEmpty()) {
      return List.of(wave.level());
    }
    return wave.mode().level().orElseThrow().levels().stream().map(Optional::of).toList();
  }
}
