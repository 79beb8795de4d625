package stackside.hostile;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Every node of the demonstration's YAML, from which a slip can move one to another place. */
final class Pool {
  private final List<Node> nodes = new ArrayList<>();
  private final List<ScalarNode> texts = new ArrayList<>();
  private final List<ScalarNode> keys = new ArrayList<>();

  Pool(Map<String, String> files) {
    files.forEach(
        (name, text) -> {
          if (name.endsWith(".yaml")) {
            collect(new Yaml().compose(new StringReader(text)));
          }
        });
  }

  private void collect(Node node) {
    nodes.add(node);
    if (node instanceof ScalarNode text) {
      texts.add(text);
    } else if (node instanceof SequenceNode list) {
      list.getValue().forEach(this::collect);
    } else if (node instanceof MappingNode group) {
      for (NodeTuple pair : group.getValue()) {
        keys.add((ScalarNode) pair.getKeyNode());
        collect(pair.getValueNode());
      }
    }
  }

  Node node(Random chance) {
    return nodes.get(chance.nextInt(nodes.size()));
  }

  ScalarNode text(Random chance) {
    return texts.get(chance.nextInt(texts.size()));
  }

  ScalarNode key(Random chance) {
    return keys.get(chance.nextInt(keys.size()));
  }
}
