package stackside.model;

import java.util.List;

/** A site or a group of sites, wherever an author may name either. */
public sealed interface SiteChoice extends Thing permits Site, SiteGroup {
  List<Site> sites();
}
