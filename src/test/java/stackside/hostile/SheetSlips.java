package stackside.hostile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** Corrupts rows and blocks: exchanges cells of a sheet, moves blocks of a page. */
final class SheetSlips {
  private final Random chance;
  private final Pool pool;
  private final Extremes extremes;

  SheetSlips(Random chance, Pool pool) {
    this.chance = chance;
    this.pool = pool;
    this.extremes = new Extremes(chance);
  }

  /** A CSV file with one to three slips. */
  String inSheet(String text) {
    List<List<String>> rows = new ArrayList<>();
    text.lines().forEach(line -> rows.add(new ArrayList<>(List.of(line.split(",", -1)))));
    int times = 1 + chance.nextInt(3);
    for (int i = 0; i < times; i++) {
      slip(rows);
    }
    return rows.stream()
        .map(row -> String.join(",", row))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private void slip(List<List<String>> rows) {
    List<String> row = rows.get(chance.nextInt(rows.size()));
    int cell = chance.nextInt(row.size());
    List<String> other = rows.get(chance.nextInt(rows.size()));
    switch (chance.nextInt(7)) {
      case 0 -> row.set(cell, other.get(chance.nextInt(other.size())));
      case 1 -> row.set(cell, extremes.of(row.get(cell)));
      case 2 -> row.set(cell, pool.text(chance).getValue().replace("\n", " "));
      case 3 -> rows.add(new ArrayList<>(row));
      case 4 -> Collections.swap(row, cell, chance.nextInt(row.size()));
      case 5 -> rows.forEach(each -> each.add(each.get(0)));
      default -> row.add("");
    }
  }

  /** A page whose blocks are moved, nested or point elsewhere. */
  String inPage(String text) {
    List<String> blocks = new ArrayList<>(List.of(text.split("\n\n", -1)));
    int at = chance.nextInt(blocks.size());
    String block = blocks.get(at);
    switch (chance.nextInt(6)) {
      case 0 -> blocks.remove(at);
      case 1 -> blocks.add(block);
      case 2 -> Collections.swap(blocks, at, chance.nextInt(blocks.size()));
      case 3 -> blocks.set(at, "- ".repeat(1 + chance.nextInt(30)) + block);
      case 4 ->
          blocks.set(at, "```figure\n" + pool.text(chance).getValue() + "\n" + block + "\n```");
      default ->
          blocks.set(
              at,
              block.replaceAll(
                  "\\]\\([^)]*\\)",
                  "](" + pool.text(chance).getValue().replaceAll("[\\\\$]", "") + ")"));
    }
    return String.join("\n\n", blocks);
  }
}
