package stackside.generate;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * The demonstration unit with an attack added to the end of every free text: scripts, styles, event
 * handlers, links that run scripts, drawings, frames, template expressions, and addresses of a
 * server that must never be contacted.
 */
public final class AttackUnit {
  /** Keys whose values are words, not ids or quantities. */
  private static final Set<String> WORDS =
      Set.of(
          "name",
          "title",
          "also",
          "technique",
          "caution",
          "cold",
          "not-approved",
          "when",
          "do",
          "see",
          "never",
          "make-safe",
          "tissue",
          "display",
          "spares-where",
          "phone",
          "role",
          "shown-as",
          "label",
          "by",
          "in",
          "for",
          "because",
          "neutral-electrode",
          "language-name",
          "question",
          "answer",
          "says",
          "text",
          "situation",
          "explain",
          "explanation",
          "verbs",
          "lamps",
          "software");

  /** Keys whose values are groups of words. */
  private static final Set<String> GROUPS = Set.of("because", "lamps");

  /** Columns of sheets whose cells are words. */
  private static final Set<String> CELLS =
      Set.of("software", "software-after", "note", "shown-as", "method", "seal");

  private final List<String> attacks;
  private int next;

  private AttackUnit(String server) {
    this.attacks =
        List.of(
            "<script>window.attacked=1</script>",
            "\"><script src=\"" + server + "/a.js\"></script>",
            "<img src=x onerror=window.attacked=1>",
            "'><svg onload=window.attacked=1>",
            "<style>@import url(" + server + "/b.css);*{display:none}</style>",
            "</title></style></textarea></script><script>window.attacked=1</script>",
            "\" onmouseover=\"window.attacked=1\" autofocus onfocus=\"window.attacked=1",
            "<iframe src=\"javascript:parent.attacked=1\"></iframe>",
            "<a href=\"javascript:window.attacked=1\">x</a>",
            "<link rel=stylesheet href=" + server + "/c.css>",
            "</svg><image href=" + server + "/d.png>",
            "<svg><script>window.attacked=1</script></svg>",
            "&lt;script&gt;window.attacked=1&lt;/script&gt; &#60;b&#62;",
            "--><script>window.attacked=1</script><!--",
            "]]><script>window.attacked=1</script>",
            "${7*7} #{7*7} <#assign x=1> [#assign x=1] ${.now}",
            "\\u003cscript>window.attacked=1\\u003c/script>",
            "<base href=" + server + "/><meta http-equiv=refresh content=\"0;url=" + server + "\">",
            "<object data="
                + server
                + "/e.svg></object><form action="
                + server
                + "><input autofocus>",
            "[x](javascript:window.attacked=1) ![x](" + server + "/f.png) [x](data:text/html,y)");
  }

  /** Writes the unit. The server is an address that no page may contact. */
  public static void write(Path folder, String server) throws IOException {
    AttackUnit unit = new AttackUnit(server);
    Path content = Path.of("content");
    try (Stream<Path> walk = Files.walk(content)) {
      for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
        String name = content.relativize(file).toString().replace('\\', '/');
        if (!name.startsWith("approved/")) {
          Path to = folder.resolve(name);
          Files.createDirectories(to.getParent());
          Files.writeString(to, unit.attacked(name, Files.readString(file)), UTF_8);
        }
      }
    }
  }

  private String attacked(String name, String text) {
    if (name.endsWith(".yaml")) {
      return yaml(withWhatTheDemonstrationLacks(name, text));
    }
    if (name.endsWith(".md")) {
      return prose(text);
    }
    return name.endsWith(".csv") ? sheet(text) : text;
  }

  private static String withWhatTheDemonstrationLacks(String name, String text) {
    if (name.equals("unit.yaml")) {
      return text + "verbs: [Seek]\n";
    }
    return name.startsWith("profiles/")
        ? text.replaceFirst("(?m)^(  - id: .*\n)", "$1    because: {thin-wall-higher: So it is}\n")
        : text;
  }

  private String attack() {
    return attacks.get(next++ % attacks.size());
  }

  private String yaml(String text) {
    DumperOptions options = new DumperOptions();
    options.setWidth(10_000);
    options.setSplitLines(false);
    Yaml yaml = new Yaml(options);
    StringWriter written = new StringWriter();
    yaml.serialize(attacked(yaml.compose(new StringReader(text))), written);
    return written.toString();
  }

  private Node attacked(Node node) {
    if (node instanceof SequenceNode list) {
      List<Node> items = list.getValue().stream().map(this::attacked).toList();
      return new SequenceNode(list.getTag(), items, list.getFlowStyle());
    }
    if (node instanceof MappingNode map) {
      List<NodeTuple> pairs = new ArrayList<>();
      for (NodeTuple pair : map.getValue()) {
        String key = ((ScalarNode) pair.getKeyNode()).getValue();
        pairs.add(new NodeTuple(pair.getKeyNode(), value(key, pair.getValueNode())));
      }
      return new MappingNode(map.getTag(), pairs, map.getFlowStyle());
    }
    return node;
  }

  private Node value(String key, Node value) {
    boolean listed = key.equals("names") || key.equals("software");
    if (listed && value instanceof SequenceNode list) {
      return withOneMore(list);
    }
    if (GROUPS.contains(key) && value instanceof MappingNode map) {
      return eachValue(key, map);
    }
    return WORDS.contains(key) ? words(value) : attacked(value);
  }

  /** Keeps the items that others refer to, and adds another one. */
  private Node withOneMore(SequenceNode list) {
    List<Node> items = new ArrayList<>(list.getValue());
    items.add(words(new ScalarNode(Tag.STR, "more", null, null, ScalarStyle.DOUBLE_QUOTED)));
    return new SequenceNode(list.getTag(), items, list.getFlowStyle());
  }

  /**
   * Adds the same attack to each lamp, because the colour in a sign is compared with that in a
   * response.
   */
  private Node eachValue(String key, MappingNode map) {
    List<NodeTuple> pairs = new ArrayList<>();
    for (NodeTuple pair : map.getValue()) {
      next = key.equals("lamps") ? 0 : next;
      pairs.add(new NodeTuple(pair.getKeyNode(), words(pair.getValueNode())));
    }
    return new MappingNode(map.getTag(), pairs, map.getFlowStyle());
  }

  private Node words(Node node) {
    if (node instanceof SequenceNode list) {
      return new SequenceNode(
          list.getTag(), list.getValue().stream().map(this::words).toList(), list.getFlowStyle());
    }
    if (node instanceof ScalarNode words && !isAnId(words.getValue())) {
      return new ScalarNode(
          Tag.STR,
          words.getValue() + " " + attack(),
          words.getStartMark(),
          words.getEndMark(),
          ScalarStyle.DOUBLE_QUOTED);
    }
    return attacked(node);
  }

  /** Leaves ids unchanged; otherwise there would be nothing to show. */
  private static boolean isAnId(String value) {
    return value.matches("[a-z0-9]+(-[a-z0-9]+)+|all|yes|no|\\d+");
  }

  private String prose(String text) {
    StringBuilder attacked = new StringBuilder();
    text.lines()
        .map(line -> line.startsWith("# ") ? line + " `" + attack() + "`" : line)
        .forEach(line -> attacked.append(line).append('\n'));
    attacked.append("\n<svg onload=window.attacked=1><script>window.attacked=1</script></svg>\n");
    attacked.append("\nWords <img src=x onerror=window.attacked=1> and more.\n");
    for (int i = 0; i < attacks.size(); i++) {
      attacked.append("\nWords and `").append(attack()).append("`.\n");
    }
    attacked.append("\n```\n").append(String.join("\n", attacks)).append("\n```\n");
    attacked.append("\n[words](javascript:window.attacked=1) and <javascript:window.attacked=1>\n");
    return attacked.toString();
  }

  private String sheet(String text) {
    List<String> columns = List.of(text.lines().findFirst().orElseThrow().split(",", -1));
    StringBuilder attacked = new StringBuilder(String.join(",", columns)).append('\n');
    List<String> rows = text.lines().skip(1).toList();
    for (int row = 0; row < rows.size(); row++) {
      String[] cells = rows.get(row).split(",", columns.size());
      for (int i = 0; i < cells.length; i++) {
        boolean last = columns.get(i).equals("level") || columns.get(i).equals("fingerprint");
        boolean words = CELLS.contains(columns.get(i)) || isWithdrawal(columns.get(i), cells[i]);
        if (words || (last && row == rows.size() - 1)) {
          cells[i] =
              '"' + (cells[i].replace("\"", "") + " " + attack()).replace("\"", "\"\"") + '"';
        }
      }
      attacked.append(String.join(",", cells)).append('\n');
    }
    return attacked.toString();
  }

  /** An empty cell says that the row counts; any words in it would not be a valid withdrawal. */
  private static boolean isWithdrawal(String column, String cell) {
    return column.equals("withdrawn") && !cell.isBlank();
  }
}
