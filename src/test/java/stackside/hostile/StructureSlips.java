package stackside.hostile;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Corrupts the content of a YAML file but keeps its syntax valid: keys and items dropped, doubled,
 * swapped and renamed, values of the wrong type, references to anything, extreme values.
 */
final class StructureSlips {
  private static final int MANY = 40;

  private final Random chance;
  private final Pool pool;
  private final Extremes extremes;
  private int steps;

  StructureSlips(Random chance, Pool pool) {
    this.chance = chance;
    this.pool = pool;
    this.extremes = new Extremes(chance);
  }

  /** The text of a file with one to three slips. */
  String in(String text) {
    Node node = new Yaml().compose(new StringReader(text));
    int times = 1 + chance.nextInt(3);
    for (int i = 0; i < times; i++) {
      steps = chance.nextInt(size(node));
      node = rebuilt(node);
    }
    DumperOptions options = new DumperOptions();
    options.setWidth(10_000);
    options.setSplitLines(false);
    options.setAllowUnicode(true);
    options.setDereferenceAliases(true);
    StringWriter written = new StringWriter();
    new Yaml(options).serialize(node, written);
    return written.toString();
  }

  private static int size(Node node) {
    if (node instanceof SequenceNode list) {
      return 1 + list.getValue().stream().mapToInt(StructureSlips::size).sum();
    }
    if (node instanceof MappingNode group) {
      return 1 + group.getValue().stream().mapToInt(pair -> size(pair.getValueNode())).sum();
    }
    return 1;
  }

  /** The tree with a slip at the node this many steps away, in reading order. */
  private Node rebuilt(Node node) {
    if (steps-- == 0) {
      return slipped(node);
    }
    if (node instanceof SequenceNode list) {
      return list(list, list.getValue().stream().map(this::rebuilt).toList());
    }
    if (node instanceof MappingNode group) {
      return group(
          group,
          group.getValue().stream()
              .map(pair -> new NodeTuple(pair.getKeyNode(), rebuilt(pair.getValueNode())))
              .toList());
    }
    return node;
  }

  private Node slipped(Node node) {
    int choice = chance.nextInt(8);
    if (choice == 0) {
      return pool.node(chance);
    }
    if (choice == 1) {
      return ofAnotherType(node);
    }
    if (node instanceof ScalarNode text) {
      return choice < 4 ? pool.text(chance) : scalar(extremes.of(text.getValue()));
    }
    if (node instanceof SequenceNode list) {
      return list(list, moved(list.getValue()));
    }
    MappingNode group = (MappingNode) node;
    return group(group, choice < 4 ? exchanged(group.getValue()) : moved(group.getValue()));
  }

  private Node ofAnotherType(Node node) {
    if (node instanceof ScalarNode) {
      return chance.nextBoolean()
          ? new SequenceNode(Tag.SEQ, List.of(node), FlowStyle.FLOW)
          : new MappingNode(Tag.MAP, List.of(new NodeTuple(node, node)), FlowStyle.FLOW);
    }
    if (node instanceof MappingNode group && chance.nextBoolean()) {
      return new SequenceNode(
          Tag.SEQ, group.getValue().stream().map(NodeTuple::getValueNode).toList(), FlowStyle.FLOW);
    }
    return pool.text(chance);
  }

  /** Items dropped, doubled, swapped, or repeated many times. */
  private <T> List<T> moved(List<T> items) {
    List<T> moved = new ArrayList<>(items);
    if (items.isEmpty()) {
      return moved;
    }
    int at = chance.nextInt(items.size());
    switch (chance.nextInt(4)) {
      case 0 -> moved.remove(at);
      case 1 -> moved.add(items.get(at));
      case 2 -> Collections.swap(moved, at, chance.nextInt(items.size()));
      default -> moved.addAll(Collections.nCopies(MANY, items.get(at)));
    }
    return moved;
  }

  /** Values exchanged between two keys, or a key renamed. */
  private List<NodeTuple> exchanged(List<NodeTuple> pairs) {
    List<NodeTuple> exchanged = new ArrayList<>(pairs);
    if (pairs.isEmpty()) {
      return exchanged;
    }
    int one = chance.nextInt(pairs.size());
    int two = chance.nextInt(pairs.size());
    if (chance.nextBoolean()) {
      exchanged.set(one, new NodeTuple(pool.key(chance), pairs.get(one).getValueNode()));
    } else {
      exchanged.set(one, new NodeTuple(pairs.get(one).getKeyNode(), pairs.get(two).getValueNode()));
      exchanged.set(two, new NodeTuple(pairs.get(two).getKeyNode(), pairs.get(one).getValueNode()));
    }
    return exchanged;
  }

  private static ScalarNode scalar(String text) {
    return new ScalarNode(Tag.STR, text, null, null, DumperOptions.ScalarStyle.PLAIN);
  }

  private static Node list(SequenceNode like, List<Node> items) {
    return new SequenceNode(like.getTag(), items, like.getFlowStyle());
  }

  private static Node group(MappingNode like, List<NodeTuple> pairs) {
    return new MappingNode(like.getTag(), pairs, like.getFlowStyle());
  }
}
