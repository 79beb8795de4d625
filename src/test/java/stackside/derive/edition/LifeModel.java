package stackside.derive.edition;

import java.util.ArrayList;
import java.util.List;

/** The life of one card as a careful person would tell it; shares no code with the program. */
public final class LifeModel {
  /** Something done with the card, and the one that was last in the site before it. */
  private record Deed(int id, char kind, int before) {}

  /** The card as it hangs, whether its generator is stopped, and what is in force. */
  private record Card(char says, int edition, int review, boolean up, boolean stop, char force) {}

  /** The site folder after each deed, with what pages show; an older copy is a shorter list. */
  private record Step(Deed deed, Card card, char shown) {}

  private static final Step START =
      new Step(new Deed(0, '-', 0), new Card('-', 0, 0, false, false, '-'), '-');

  private final List<Deed> ledger = new ArrayList<>();
  private final List<Step> site = new ArrayList<>();
  private final char[] signed = {'-', '-'};
  private final int[] signedOn = {0, 0};
  private char value = 'A';
  private int day;
  private boolean bad;
  private boolean written;
  private int given;
  private int ids;
  private final boolean withPages;

  public LifeModel(boolean withPages) {
    this.withPages = withPages;
  }

  public void edit(char to) {
    value = to;
  }

  public void sign(int role) {
    signed[role] = value;
    signedOn[role] = day;
  }

  public void timePasses(int days) {
    day += days;
  }

  public void readBack(boolean inASheet) {
    bad = !bad;
    written |= inASheet;
  }

  public void restore() {
    if (site.size() > 1) {
      site.remove(site.size() - 1);
    }
  }

  public void issue() {
    if (!together()) {
      return;
    }
    adopt();
    Card card = top().card();
    boolean stop = card.stop() || bad;
    boolean agreed = signed[0] == value && signed[1] == value;
    int review = Math.min(signedOn[0], signedOn[1]) + 365;
    char force = agreed ? value : card.force();
    boolean same =
        card.up() && card.says() == value && card.review() == review && card.edition() == given;
    boolean fresh = !stop && agreed && day <= review && !same;
    boolean changes = fresh || stop != card.stop() || force != card.force() || (stop && card.up());
    boolean again = top().deed().kind() == 'I' && beyond().isEmpty();
    if (changes || written || !again || shown() != top().shown()) {
      written = false;
      given += fresh ? 1 : 0;
      boolean up = card.up() && !stop;
      Card rest = new Card(card.says(), card.edition(), card.review(), up, stop, force);
      add('I', fresh ? new Card(value, given, review, true, false, force) : rest, true);
    }
  }

  public void withdraw() {
    if (top().card().up()) {
      boolean told = together();
      if (told) {
        adopt();
      }
      add('W', stopped(true), told);
    }
  }

  public void lift() {
    if (together() && top().card().stop() && !bad) {
      adopt();
      add('L', stopped(false), true);
    }
  }

  private Step top() {
    return site.isEmpty() ? START : site.get(site.size() - 1);
  }

  private Card stopped(boolean stop) {
    Card card = top().card();
    return new Card(card.says(), card.edition(), card.review(), false, stop, card.force());
  }

  private char shown() {
    return withPages && signed[0] == value && signed[1] == value ? value : '-';
  }

  private void add(char kind, Card card, boolean told) {
    Deed deed = new Deed(++ids, kind, top().deed().id());
    site.add(new Step(deed, card, shown()));
    if (told) {
      ledger.add(deed);
    }
  }

  /** Whether ledger and site can go on together: at most issues were lost, or withdrawals alone. */
  public boolean together() {
    int common =
        site.stream().map(Step::deed).filter(ledger::contains).mapToInt(Deed::id).max().orElse(0);
    return beyond().stream().allMatch(deed -> deed.kind() == 'I' && deed.before() == common);
  }

  private List<Deed> beyond() {
    int from = site.stream().map(Step::deed).mapToInt(ledger::indexOf).max().orElse(-1) + 1;
    return ledger.subList(from, ledger.size());
  }

  private void adopt() {
    site.stream().map(Step::deed).filter(deed -> !ledger.contains(deed)).forEach(ledger::add);
  }

  public String seen() {
    Card card = top().card();
    String words = card.says() + " " + card.edition() + (card.up() ? " up" : " down");
    long issues = ledger.stream().filter(deed -> deed.kind() == 'I').count();
    return (card.edition() == 0 ? "none" : words)
        + (card.stop() ? " stopped" : "")
        + ", %d issues, ledger %d, site %d, ".formatted(issues, ledger.size(), site.size())
        + (together() ? "together" : "apart");
  }
}
