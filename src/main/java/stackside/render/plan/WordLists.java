package stackside.render.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stackside.model.Sentence;
import stackside.model.Site;
import stackside.model.SiteGroup;
import stackside.model.Unit;

/** Joins the names of sites, lesions and steps into words that can be read aloud. */
final class WordLists {
  private WordLists() {}

  /** Names sites by whole groups, largest first, then one by one. */
  static String sites(Unit unit, Set<Site> wanted) {
    Set<Site> left = new LinkedHashSet<>(wanted);
    List<String> names = new ArrayList<>();
    for (SiteGroup group : largestFirst(unit)) {
      if (group.sites().size() > 1 && left.containsAll(group.sites())) {
        names.add(group.title());
        group.sites().forEach(left::remove);
      }
    }
    unit.sites().stream().filter(left::contains).map(Site::title).forEach(names::add);
    return continued(names, ", ");
  }

  private static List<SiteGroup> largestFirst(Unit unit) {
    return unit.siteGroups().stream()
        .sorted((one, other) -> Integer.compare(other.sites().size(), one.sites().size()))
        .toList();
  }

  /** Joins names as within a sentence; all but the first start in lower case. */
  static String continued(List<String> names, String between) {
    StringBuilder words = new StringBuilder();
    for (String name : names) {
      words.append(words.length() == 0 ? name : between + Sentence.within(name));
    }
    return words.toString();
  }

  /** A phrase as it reads at the start of a sentence. */
  static String asSentence(String words) {
    String start = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    return start.endsWith(".") ? start : start + ".";
  }
}
