package stackside.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Files that are absurdly large, deep or repetitive. */
final class Monsters {
  private static final int MUCH = 100_000;
  private static final int MEGABYTE = 1024 * 1024;

  private final List<Input> inputs = new ArrayList<>();

  private Monsters() {}

  static List<Input> all() {
    Monsters monsters = new Monsters();
    monsters.yaml();
    monsters.markdown();
    monsters.sheets();
    monsters.large();
    return monsters.inputs;
  }

  private void yaml() {
    for (String file : List.of("instruments.yaml", "machines/a.yaml")) {
      repeated(
          file, "[", "{", "- ", "? ", "a: ", "[a, ", "{a: ", "- !", "\\", "!!x ", "- - ", "&a ");
      text(file, "quote never closed", "\"" + "a".repeat(MUCH));
      text(file, "lines in a quote", "'" + "\n".repeat(MUCH));
      text(file, "block of lines", "|\n" + " a\n".repeat(MUCH));
      text(file, "endless id", "- {id: " + "a".repeat(MUCH) + "}");
      text(file, "endless id of hyphens", "- {id: a-" + "a-".repeat(MUCH) + "}");
      text(file, "endless key", "k".repeat(MUCH) + ": 1");
      text(file, "endless number", "- {id: a, kind: " + "9".repeat(MUCH) + "}");
      text(file, "endless comment", "#" + "x".repeat(MUCH));
      text(file, "many items", "- {x: 1}\n".repeat(2_000));
      text(file, "many keys", keys(5_000));
      text(file, "one key many times", "id: a\n".repeat(5_000));
      text(file, "many anchors", "- &a\n".repeat(10_000));
      text(file, "spaces", " ".repeat(MUCH) + "a:\n b");
      text(file, "many documents", "---\na: 1\n".repeat(10_000));
      text(file, "alias bomb", bomb());
      text(file, "merge bomb", bomb().replace("[*", "{<<: [*") + "}");
      text(file, "itself", "a: &a [*a, *a]\n");
    }
    text("instruments.yaml", "many alike", alike(2_000));
    text(
        "drills/a.yaml",
        "endless title in quotes",
        "make-safe: '[x](a \"" + "w ".repeat(9_500) + "'");
    text("sites.yaml", "groups in a circle", circle(2_000));
    text(
        "unit.yaml",
        "five hundred locations",
        "format: 1\nlocations:\n" + "  - {id: a}\n".repeat(500));
  }

  private static String keys(int count) {
    return IntStream.range(0, count).mapToObj(i -> "k" + i + ": 1\n").collect(Collectors.joining());
  }

  private static String bomb() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 30; i++) {
      String alias = "*a" + (i - 1);
      bomb.append("a").append(i).append(": &a").append(i).append(" [");
      bomb.append(String.join(", ", List.of(alias, alias, alias, alias, alias, alias)));
      bomb.append("]\n");
    }
    return bomb.toString();
  }

  private static String alike(int count) {
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                "- {id: snare-"
                    + i
                    + ", name: Snare "
                    + i
                    + ", kind: monopolar, connector: pin-3,"
                    + " rated-voltage: 2000 V peak, single-use: yes}\n")
        .collect(Collectors.joining());
  }

  private static String circle(int count) {
    return "sites: [{id: caecum, name: Caecum, tract: lower, wall: thin}]\ngroups:\n"
        + IntStream.range(0, count)
            .mapToObj(
                i ->
                    "  - {id: g-%d, name: G %d, of: [g-%d, caecum]}\n"
                        .formatted(i, i, (i + 1) % count))
            .collect(Collectors.joining());
  }

  private void markdown() {
    for (String start : List.of("# A\n\n", "")) {
      for (String bait :
          List.of(
              "[",
              "![",
              "[a](",
              "*a ",
              "**a *b ",
              "*",
              "_a_",
              "> ",
              "- ",
              "1. ",
              "`",
              "` `` ",
              "<",
              "<a ",
              "<!--",
              "<?",
              "<![CDATA[",
              "&",
              "&#1",
              "[a][b] ",
              "[a](machine:b) ",
              "#",
              "~~",
              "](",
              "[a]: b\n",
              "- a\n",
              "a\n",
              "  - a\n    ",
              "|a",
              "<a href='",
              "\\",
              "a@b.test ",
              "http://a.test ",
              "****",
              "_*")) {
        text("handbook/a.md", start.isEmpty() + " " + shown(bait), start + bait.repeat(10_000));
        text("handbook/a.md", start.isEmpty() + " short " + shown(bait), start + bait.repeat(700));
      }
      for (String bait : List.of("[x](a \"", "[x](<", "[", "<a b=\"", "![x](a '", "[y]: <", "&#")) {
        text("handbook/a.md", "endless " + start.isEmpty() + bait, start + bait + words(49_000));
      }
      text("handbook/a.md", "endless id", start + "[a](machine:" + "a-".repeat(1_450) + "a)");
      text("handbook/a.md", "endless address", start + "[a](https://a" + "/a".repeat(1_450) + ")");
      text(
          "handbook/a.md",
          "wide table",
          start + "|a".repeat(1_000) + "|\n" + "|-".repeat(1_000) + "|\n");
      text(
          "handbook/a.md",
          "long table",
          start + "| a | b |\n|---|---|\n" + "| a | b |\n".repeat(4_000));
      text("handbook/a.md", "staircase", start + staircase());
      text("handbook/a.md", "links", start + "[a](machine:b) ".repeat(200) + "\n\n");
      text("handbook/a.md", "figures", start + "```figure\nx\n```\n\n".repeat(3_000));
      text("handbook/a.md", "headings", start + "## a\n\n".repeat(6_000));
    }
  }

  private static String words(int letters) {
    return "words of a page\n".repeat(letters / 16);
  }

  private static String staircase() {
    return IntStream.range(0, 290)
        .mapToObj(i -> " ".repeat(i) + "- a\n")
        .collect(Collectors.joining());
  }

  private void sheets() {
    String header = "asset,machine,software,status,since\n";
    text("assets.csv", "quotes", "\"".repeat(MUCH));
    text("assets.csv", "commas", ",".repeat(MUCH));
    text("assets.csv", "other columns", "a,b\n".repeat(MUCH / 4));
    text("assets.csv", "same row", header + "a,b,c,d,e\n".repeat(2_000));
    text("assets.csv", "empty rows", header + ",,,,\n".repeat(MUCH / 5));
    text("assets.csv", "empty lines", "\n".repeat(MUCH) + "asset");
    text("assets.csv", "endless cell", header + "\"" + "a\n".repeat(MUCH) + "\",b,c,d,e\n");
    large(
        "assets.csv",
        "hundred thousand rows",
        () -> header + rows("EQ-%05d,cordgrass,2.3,in use,2024-05-02\n"));
    large(
        "service-events.csv",
        "hundred thousand rows",
        () -> "asset,date,event,software-after,note\n" + rows("EQ-%05d,2026-01-01,service,,x\n"));
    large("approvals.csv", "hundred thousand rows", () -> rows("EQ-%05d,a,b,c,d,e,f\n"));
  }

  private static String rows(String form) {
    return IntStream.range(0, MUCH).mapToObj(i -> form.formatted(i)).collect(Collectors.joining());
  }

  private void large() {
    for (String file :
        List.of("unit.yaml", "instruments.yaml", "assets.csv", "approvals.csv", "handbook/a.md")) {
      large(file, "ten megabytes", () -> "x".repeat(10 * MEGABYTE));
      large(file, "just under the limit, one line", () -> "x".repeat(5 * MEGABYTE - 10));
      large(file, "just under the limit, short lines", () -> "a: b\n".repeat(MEGABYTE - 10));
      large(file, "just under the limit, of NUL", () -> "\0".repeat(5 * MEGABYTE - 10));
      large(file, "just under the limit, wide letters", () -> "𝕊 ".repeat(MEGABYTE - 10));
    }
    inputs.add(
        new Input(
            "monster",
            "thousand handbook pages",
            Ground.Kind.BARE,
            () -> {
              TreeMap<String, byte[]> pages = new TreeMap<>();
              for (int i = 0; i < 1_000; i++) {
                pages.put("handbook/p-" + i + ".md", "# Page\n\nWords.\n".getBytes(UTF_8));
              }
              return pages;
            }));
  }

  private void repeated(String file, String... crumbs) {
    for (String crumb : crumbs) {
      text(file, shown(crumb), crumb.repeat(MUCH));
    }
  }

  private static String shown(String crumb) {
    return crumb.replace("\n", "\\n");
  }

  private void text(String file, String name, String text) {
    large(file, name, () -> text);
  }

  private void large(String file, String name, Supplier<String> text) {
    inputs.add(
        new Input(
            "monster",
            file + ": " + name,
            Ground.Kind.BARE,
            () -> new TreeMap<>(java.util.Map.of(file, text.get().getBytes(UTF_8)))));
  }
}
