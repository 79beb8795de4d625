package stackside.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;

/** All inputs of a run, in a fixed order. */
final class Inputs {
  private static final List<String> TARGETS_OF_RUBBISH =
      List.of(
          "instruments.yaml",
          "sites.yaml",
          "machines/a.yaml",
          "profiles/a.yaml",
          "drills/a.yaml",
          "assets.csv",
          "approvals.csv",
          "handbook/a.md");

  private final Map<Ground.Kind, SortedMap<String, String>> texts = new TreeMap<>();
  private final Pool pool;
  private final List<Input> inputs = new ArrayList<>();

  private Inputs() throws IOException {
    for (Ground.Kind kind : Ground.Kind.values()) {
      texts.put(kind, Ground.files(kind));
    }
    this.pool = new Pool(texts.get(Ground.Kind.DEMONSTRATION));
  }

  /** All of the corpus and the monsters, and this many thousand of each kind of random input. */
  static List<Input> all(int thousands) throws IOException {
    Inputs all = new Inputs();
    all.inputs.addAll(Corpus.inputs());
    all.inputs.addAll(Monsters.all());
    all.rubbish(450 * thousands);
    all.slips(140 * thousands, Ground.Kind.ONE_GENERATOR);
    all.structure(180 * thousands, Ground.Kind.ONE_GENERATOR);
    all.slips(8 * thousands, Ground.Kind.DEMONSTRATION);
    all.structure(12 * thousands, Ground.Kind.DEMONSTRATION);
    return all.inputs;
  }

  private void rubbish(int count) {
    for (int i = 0; i < count; i++) {
      int seed = i;
      inputs.add(
          new Input(
              "rubbish",
              "seed " + seed,
              Ground.Kind.BARE,
              () -> {
                Slips slips = new Slips(new Random(seed));
                SortedMap<String, byte[]> files = new TreeMap<>();
                TARGETS_OF_RUBBISH.forEach(
                    name -> files.put(name, slips.rubbish().getBytes(UTF_8)));
                return files;
              }));
    }
  }

  private void slips(int count, Ground.Kind ground) {
    for (int i = 0; i < count; i++) {
      int seed = i;
      inputs.add(
          new Input("slips in the text", "seed " + seed, ground, () -> slipped(ground, seed)));
    }
  }

  private SortedMap<String, byte[]> slipped(Ground.Kind ground, int seed) {
    Random chance = new Random(seed);
    String victim = victim(ground, chance);
    String other = texts.get(ground).get(victim(ground, chance));
    String text = new Slips(chance).in(texts.get(ground).get(victim), other);
    return new TreeMap<>(Map.of(victim, text.getBytes(UTF_8)));
  }

  private void structure(int count, Ground.Kind ground) {
    for (int i = 0; i < count; i++) {
      int seed = i;
      inputs.add(
          new Input(
              "slips in the structure", "seed " + seed, ground, () -> restructured(ground, seed)));
    }
  }

  private SortedMap<String, byte[]> restructured(Ground.Kind ground, int seed) {
    Random chance = new Random(seed);
    SortedMap<String, byte[]> files = new TreeMap<>();
    int count = 1 + chance.nextInt(3);
    for (int i = 0; i < count; i++) {
      String victim = victim(ground, chance);
      files.put(
          victim, restructured(victim, texts.get(ground).get(victim), chance).getBytes(UTF_8));
    }
    return files;
  }

  private String restructured(String name, String text, Random chance) {
    if (name.endsWith(".yaml")) {
      return new StructureSlips(chance, pool).in(text);
    }
    SheetSlips slips = new SheetSlips(chance, pool);
    return name.endsWith(".csv") ? slips.inSheet(text) : slips.inPage(text);
  }

  private String victim(Ground.Kind ground, Random chance) {
    List<String> names = List.copyOf(texts.get(ground).keySet());
    return names.get(chance.nextInt(names.size()));
  }
}
