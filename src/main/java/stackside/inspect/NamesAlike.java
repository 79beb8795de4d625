package stackside.inspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stackside.render.plan.AnswerRow;
import stackside.render.plan.Block;
import stackside.render.plan.Phrase;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds programs and modes on one card whose names are easily taken for each other. */
final class NamesAlike implements CardRule {

  private static final Fault FAULT =
      new Fault("names-alike", Severity.WARNING, "two names on a card differ by a letter or two");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final int CLOSE = 2;

  @Override
  public List<Problem> problems(InspectedCard card) {
    Map<String, Phrase> programs = new LinkedHashMap<>();
    Map<String, Phrase> modes = new LinkedHashMap<>();
    for (Block.Answers answers : card.plan().blocks(Block.Answers.class)) {
      for (AnswerRow row : answers.rows()) {
        if (row.answer() instanceof AnswerRow.WithCurrent settings) {
          programs.putIfAbsent(settings.program().words().words(), settings.program().words());
          settings.pedals().stream()
              .map(AnswerRow.OnPedal::mode)
              .forEach(mode -> modes.putIfAbsent(mode.words(), mode));
        }
      }
    }
    List<Problem> problems = new ArrayList<>();
    judge(programs, problems);
    judge(modes, problems);
    return problems;
  }

  private static void judge(Map<String, Phrase> names, List<Problem> problems) {
    List<Phrase> before = new ArrayList<>();
    for (Phrase name : names.values()) {
      before.stream()
          .filter(other -> distance(name.words(), other.words()) <= CLOSE)
          .forEach(other -> problems.add(problem(name, other)));
      before.add(name);
    }
  }

  private static Problem problem(Phrase name, Phrase other) {
    return FAULT
        .at(name.at(), "'" + name.words() + "' is easily taken for '" + other.words() + "'")
        .note(other.at(), "the other stands here")
        .help("give them names that differ in more than two letters");
  }

  /** Letters to add, take away or change until one word is the other. */
  private static int distance(String one, String other) {
    int[] last = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] next = new int[other.length() + 1];
      next[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        next[j] = Math.min(last[j - 1] + same, 1 + Math.min(last[j], next[j - 1]));
      }
      last = next;
    }
    return last[other.length()];
  }
}
