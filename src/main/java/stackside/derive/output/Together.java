package stackside.derive.output;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.derive.output.Outputs.InUse;
import stackside.model.Mode;
import stackside.model.ThingId;

/**
 * Several modes, at settings that approved answers really use, for comparison. The settings come
 * from the answers that set most of these modes at once and, among those, from the ones used most
 * often.
 *
 * @param settings of those modes whose output is known, in the order of the modes
 */
public record Together(List<InUse> settings) {

  public Together {
    settings = List.copyOf(settings);
  }

  /** Chooses a setting for each mode. */
  public static Together of(Outputs outputs, List<Mode> modes) {
    Map<ThingId, List<InUse>> byAnswer = new LinkedHashMap<>();
    for (InUse use : known(outputs, modes)) {
      for (Outputs.SettingUse asked : use.asked()) {
        List<InUse> here =
            byAnswer.computeIfAbsent(asked.profile().id(), each -> new ArrayList<>());
        if (here.stream().noneMatch(each -> isOf(each, use.setting().mode()))) {
          here.add(use);
        }
      }
    }
    Optional<List<InUse>> most = mostAsked(byAnswer);
    return new Together(
        modes.stream()
            .flatMap(mode -> most.flatMap(it -> chosen(it, outputs, mode)).stream())
            .toList());
  }

  /** The settings of the answer that sets most of the modes; of several, the most frequent. */
  private static Optional<List<InUse>> mostAsked(Map<ThingId, List<InUse>> byAnswer) {
    Map<List<InUse>, Integer> counts = new LinkedHashMap<>();
    byAnswer.values().forEach(settings -> counts.merge(settings, 1, Integer::sum));
    Comparator<Map.Entry<List<InUse>, Integer>> order =
        Comparator.comparing(each -> each.getKey().size());
    return counts.entrySet().stream()
        .sorted(order.thenComparing(Map.Entry::getValue).reversed())
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static Optional<InUse> chosen(List<InUse> together, Outputs outputs, Mode mode) {
    return together.stream()
        .filter(each -> isOf(each, mode))
        .findFirst()
        .or(
            () ->
                known(outputs, List.of(mode)).stream()
                    .max(Comparator.comparing(each -> each.asked().size())));
  }

  private static List<InUse> known(Outputs outputs, List<Mode> modes) {
    return outputs.inUse().stream()
        .filter(use -> use.output().isPresent())
        .filter(use -> modes.stream().anyMatch(mode -> isOf(use, mode)))
        .toList();
  }

  private static boolean isOf(InUse use, Mode mode) {
    return use.setting().mode().id().equals(mode.id());
  }
}
