package stackside.seeded;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stackside.model.ConnectorId;
import stackside.model.Evidence;
import stackside.model.LampId;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Word;
import stackside.source.Location;

/** A kind of slip by an author, as one edit of the text at a spot. */
enum Slip {
  /** The value is missing but its key remains. */
  EMPTIED {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return isGroup(spot, lines) ? Optional.empty() : Optional.of(isCell(spot) ? "" : "\"\"");
    }
  },
  /** An extra letter. */
  MISSPELT {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      String text = lines.text(spot.at());
      boolean free = spot.value() instanceof String || spot.value() instanceof Boolean;
      if (isGroup(spot, lines) || free || isBare(spot) || text.isEmpty()) {
        return Optional.empty();
      }
      int end = text.endsWith("\"") ? text.length() - 1 : text.length();
      return Optional.of(text.substring(0, end) + "x" + text.substring(end));
    }
  },
  /** Another value that could be written here. */
  OTHER {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      if (isGroup(spot, lines) || isBare(spot)) {
        return Optional.empty();
      }
      String text = lines.text(spot.at());
      List<String> others =
          others(spot, pool).filter(each -> !each.equals(text)).distinct().sorted().toList();
      return others.isEmpty()
          ? Optional.empty()
          : Optional.of(others.get(random.nextInt(others.size())));
    }

    private Stream<String> others(Spot spot, Pool pool) {
      if (spot.value() instanceof Word word) {
        return Stream.of(word.getClass().getEnumConstants())
            .map(Word.class::cast)
            .map(each -> isCell(spot) ? each.spoken() : each.word());
      }
      if (spot.value() instanceof Boolean) {
        return Stream.of("yes", "no");
      }
      return pool.of(spot);
    }
  },
  /** One number ten times too large. */
  TENFOLD {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return isNumber(spot) ? scaled(spot, lines, BigDecimal.TEN) : Optional.empty();
    }
  },
  /** One number half as large. */
  HALVED {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return isNumber(spot) ? scaled(spot, lines, new BigDecimal("0.5")) : Optional.empty();
    }
  },
  /** One number twice as large. */
  DOUBLED {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return isNumber(spot) ? scaled(spot, lines, new BigDecimal("2")) : Optional.empty();
    }
  },
  /** A quantity without its unit. */
  WITHOUT_UNIT {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      String text = lines.text(spot.at());
      boolean quantity = text.matches("\"?[0-9][0-9.]* [A-Za-z/0-9 ]+\"?");
      return isNumber(spot) && quantity
          ? Optional.of(text.replaceFirst(" [A-Za-z/0-9 ]+", ""))
          : Optional.empty();
    }
  },
  /** A range that runs backwards. */
  BACKWARDS {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      Matcher range =
          Pattern.compile("(\"?)(\\S+(?: [A-Za-z]+)?) to (\\S+(?: [A-Za-z]+)?)(.*)")
              .matcher(lines.text(spot.at()));
      return isGroup(spot, lines) || spot.value() instanceof String || !range.matches()
          ? Optional.empty()
          : Optional.of(range.group(1) + range.group(3) + " to " + range.group(2) + range.group(4));
    }
  },
  /** A date in the future. */
  YEARS_LATER {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return spot.value() instanceof LocalDate day
          ? Optional.of(day.plusYears(9).toString())
          : Optional.empty();
    }
  },
  /** A date before there were any records. */
  YEARS_EARLIER {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return spot.value() instanceof LocalDate day
          ? Optional.of(day.minusYears(30).toString())
          : Optional.empty();
    }
  },
  /** A date that does not exist. */
  NO_DAY {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return spot.value() instanceof LocalDate day
          ? Optional.of(day.getYear() + "-02-30")
          : Optional.empty();
    }
  },
  /** An id that some systems cannot use as a file name. */
  DEVICE {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return spot.component().endsWith(".id")
              && spot.value() instanceof ThingId
              && !isGroup(spot, lines)
          ? Optional.of(List.of("con", "nul", "com1", "lpt9", "prn", "aux").get(random.nextInt(6)))
          : Optional.empty();
    }
  },
  /** A handbook page whose title has lost its mark. */
  UNTITLED {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      String text = lines.text(spot.at());
      return spot.component().equals("HandbookPage.name")
          ? Optional.of(text.replaceFirst("^# ", ""))
          : Optional.empty();
    }
  },
  /** HTML in the prose of a page. */
  HTML {
    @Override
    Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
      return spot.component().matches("HandbookPage\\.(text|remarks)")
          ? Optional.of(lines.text(spot.at()) + "\n\n<script>alert(1)</script>")
          : Optional.empty();
    }
  },
  /** The same line twice. */
  TWICE {
    @Override
    Optional<List<String>> lines(Spot spot, Lines lines) {
      return rows(spot, lines).map(row -> List.of(row.get(0), row.get(0)));
    }
  },
  /** The line is missing. */
  GONE {
    @Override
    Optional<List<String>> lines(Spot spot, Lines lines) {
      return rows(spot, lines).map(row -> List.of());
    }
  },
  /** One of several words in brackets is missing. */
  STRUCK {
    @Override
    Optional<Edit> at(Spot spot, Lines lines, Pool pool, Random random) {
      Location at = spot.at();
      if (at.length() == 0) {
        return Optional.empty();
      }
      String line = lines.line(at);
      String before = line.substring(0, at.column() - 1);
      String after = line.substring(at.column() - 1 + at.length());
      if (lines.text(at).matches(".*[\\[\\]{}].*")) {
        return Optional.empty();
      }
      if (before.endsWith("[") && after.startsWith(", ")) {
        return Optional.of(Edit.of(spot, this, lines, 1, List.of(before + after.substring(2))));
      }
      return before.matches(".*\\[[^\\]]*, ") && after.matches("[,\\]].*")
          ? Optional.of(
              Edit.of(
                  spot, this, lines, 1, List.of(before.substring(0, before.length() - 2) + after)))
          : Optional.empty();
    }
  },
  /** Two lines swapped. */
  SWAPPED {
    @Override
    Optional<List<String>> lines(Spot spot, Lines lines) {
      return rows(spot, lines)
          .filter(row -> row.size() == 2)
          .map(row -> List.of(row.get(1), row.get(0)));
    }
  };

  /** The replacement text at the spot; absent if this slip makes no sense there. */
  Optional<String> text(Spot spot, Lines lines, Pool pool, Random random) {
    return Optional.empty();
  }

  /** The replacement for the line, and for the next one if both are rows of one list. */
  Optional<List<String>> lines(Spot spot, Lines lines) {
    return Optional.empty();
  }

  /** The edit at a spot; absent if this slip makes no sense there. */
  Optional<Edit> at(Spot spot, Lines lines, Pool pool, Random random) {
    Location at = spot.at();
    if (at.length() == 0) {
      return Optional.empty();
    }
    Optional<Edit> inLine =
        text(spot, lines, pool, random)
            .map(
                text -> {
                  String line = lines.line(at);
                  return Edit.of(
                      spot,
                      this,
                      lines,
                      1,
                      List.of(
                          line.substring(0, at.column() - 1)
                              + text
                              + line.substring(at.column() - 1 + at.length())));
                });
    return inLine.or(
        () ->
            lines(spot, lines)
                .map(rows -> Edit.of(spot, this, lines, this == SWAPPED ? 2 : 1, rows)));
  }

  private static boolean isCell(Spot spot) {
    return spot.at().file().endsWith(".csv");
  }

  /** Whether the spot holds several keys or items rather than a single text. */
  private static boolean isGroup(Spot spot, Lines lines) {
    String text = lines.text(spot.at());
    return spot.value() instanceof Collection<?>
        || text.startsWith("{")
        || text.startsWith("[")
        || text.startsWith("#")
        || text.matches("[a-z-]+: .*")
        || (isCell(spot) && text.contains(","));
  }

  /** Whether the spot is part of a text that another spot covers as a whole. */
  private static boolean isBare(Spot spot) {
    return spot.component()
        .matches("(ThingId|LampId|ConnectorId|ContactHours|Stretch|Withdrawal)\\..*");
  }

  private static boolean isNumber(Spot spot) {
    boolean named =
        spot.value() instanceof Word
            || spot.value() instanceof Thing
            || spot.value() instanceof ThingId
            || spot.value() instanceof String
            || spot.value() instanceof Boolean
            || spot.value() instanceof LocalDate
            || spot.value() instanceof LampId
            || spot.value() instanceof ConnectorId
            || spot.value() instanceof Evidence
            || spot.value() instanceof Collection<?>;
    return !named && !isBare(spot);
  }

  private static Optional<String> scaled(Spot spot, Lines lines, BigDecimal factor) {
    String text = lines.text(spot.at());
    Matcher number = Pattern.compile("(?<![A-Za-z])\\d+(\\.\\d+)?").matcher(text);
    int wanted = spot.component().matches(".*\\.(to|column|y|power)") ? 2 : 1;
    for (int found = 0; found < wanted; found++) {
      if (!number.find()) {
        return Optional.empty();
      }
    }
    String scaled =
        new BigDecimal(number.group()).multiply(factor).stripTrailingZeros().toPlainString();
    return text.startsWith("{") || scaled.equals(number.group())
        ? Optional.empty()
        : Optional.of(text.substring(0, number.start()) + scaled + text.substring(number.end()));
  }

  /** The line of a row in a list or table, together with the next one if it is adjacent. */
  private static Optional<List<String>> rows(Spot spot, Lines lines) {
    if (!(spot.value() instanceof Collection<?>)) {
      return Optional.empty();
    }
    String line = lines.line(spot.at());
    int below = spot.at().line();
    List<String> all = lines.of(spot.at().file());
    String next = below < all.size() ? all.get(below) : "";
    if (isCell(spot)) {
      return Optional.of(next.isEmpty() ? List.of(line) : List.of(line, next));
    }
    String indent = line.replaceFirst("\\S.*", "");
    if (!line.strip().matches("- \\{.*\\}")) {
      return Optional.empty();
    }
    return Optional.of(
        next.startsWith(indent + "- {") && next.endsWith("}")
            ? List.of(line, next)
            : List.of(line));
  }
}
