package stackside.derive.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.PedalSetting;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.quantity.PowerRange;
import stackside.quantity.Watts;

/** What every approved setting delivers; each machine's distinct settings are listed once. */
public record Outputs(List<InUse> inUse) {

  public Outputs {
    inUse = List.copyOf(inUse);
  }

  /** A setting, all places where profiles use it, and its output if published. */
  public record InUse(
      Machine machine, ModeSetting setting, Optional<ModeOutput> output, List<SettingUse> asked) {
    public InUse {
      asked = List.copyOf(asked);
    }
  }

  /** A place where a profile uses a setting. */
  public record SettingUse(Profile profile, PedalSetting pedal) {}

  private record Key(ThingId machine, ModeSetting setting) {}

  /** Collects the settings of all profiles, in the order of the content. */
  public static Outputs of(Unit unit) {
    Map<Key, List<SettingUse>> all = new LinkedHashMap<>();
    for (Profile profile : unit.profiles()) {
      for (PedalSetting pedal : profile.settings().map(Settings::assigned).orElse(List.of())) {
        Key key = new Key(profile.machine().value().id(), ModeSetting.of(pedal));
        all.computeIfAbsent(key, each -> new ArrayList<>()).add(new SettingUse(profile, pedal));
      }
    }
    List<InUse> inUse = new ArrayList<>();
    all.forEach((key, asked) -> inUse.add(inUse(key.setting(), asked)));
    return new Outputs(inUse);
  }

  private static InUse inUse(ModeSetting setting, List<SettingUse> asked) {
    Machine machine = asked.get(0).profile().machine().value();
    return new InUse(machine, setting, ModeOutput.of(machine, setting), asked);
  }

  /** The settings in use on a machine. */
  public List<InUse> on(Machine machine) {
    return inUse.stream().filter(each -> each.machine().id().equals(machine.id())).toList();
  }

  /** The published outputs of a profile's pedals. */
  public List<ModeOutput> of(Profile profile) {
    return profile.settings().map(Settings::assigned).orElse(List.of()).stream()
        .flatMap(pedal -> ModeOutput.of(profile.machine().value(), ModeSetting.of(pedal)).stream())
        .toList();
  }

  /** A mode at each of its levels, each with the highest power limit that can be set. */
  public static List<ModeOutput> fullyOpen(Machine machine, Mode mode) {
    Optional<Watts> most = mode.powerLimit().map(Fact::value).map(PowerRange::to);
    List<Optional<Level>> levels = new ArrayList<>();
    mode.level().ifPresent(scale -> scale.levels().forEach(each -> levels.add(Optional.of(each))));
    if (levels.isEmpty()) {
      levels.add(Optional.empty());
    }
    return levels.stream()
        .flatMap(level -> ModeOutput.of(machine, new ModeSetting(mode, level, most)).stream())
        .toList();
  }
}
