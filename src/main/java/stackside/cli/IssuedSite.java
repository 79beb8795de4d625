package stackside.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.content.NearNames;
import stackside.derive.Analysis;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Editions;
import stackside.derive.edition.Register;
import stackside.derive.edition.RegisterEntry;
import stackside.derive.signed.Approvals;
import stackside.model.Unit;
import stackside.publish.FileList;
import stackside.publish.OutputFolder;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.site.SiteRenderer;

/**
 * A site folder as an issue left it, for changing single cards of it without its content.
 *
 * @param hanging its files, without any card that is not as it was issued: such a file is no
 *     edition, and the next issue makes it right
 * @param altered the files that are not as they were issued, and those that are gone
 */
record IssuedSite(
    SortedMap<String, OutputFile> hanging, Register register, Unit unit, List<String> altered) {

  IssuedSite {
    altered = List.copyOf(altered);
  }

  static IssuedSite in(OutputFolder folder, Path out) throws IOException, UsageException {
    SortedMap<String, OutputFile> hanging = new TreeMap<>(folder.files());
    Register register = RegisterFile.in(hanging, out);
    List<String> altered = folder.written().differing(FileList.of(hanging.values()));
    Set<String> cards =
        register.cards().values().stream().map(CardEntry::path).collect(Collectors.toSet());
    hanging.keySet().removeIf(path -> cards.contains(path) && altered.contains(path));
    return new IssuedSite(hanging, register, KeptUnit.in(hanging), altered);
  }

  /** The files that are not as they were issued, in words. */
  Stream<String> notes() {
    return altered.stream()
        .map(
            path -> "the file " + path + " is not as it was issued; the next issue makes it right");
  }

  /** The files after one more entry, and the entry that knows them. */
  record After(List<OutputFile> files, RegisterEntry entry) {}

  void refuseUnknownRole(String role) throws UsageException {
    List<String> roles = unit.details().roles().stream().map(r -> r.id().slug()).toList();
    if (!roles.contains(role)) {
      throw new UsageException(
          "there is no role '" + role + "'; unit.yaml has " + NearNames.quoted(roles, " and "));
    }
  }

  /** The site as it stands, with new pages about cards and without the files of those down. */
  After after(RegisterEntry entry, List<CardEntry> changed, LocalDate on) {
    Register shown = register.with(entry);
    Publication publication =
        new Publication(
            Analysis.of(unit),
            List.of(),
            List.of(),
            Marking.ISSUED,
            new Editions(new TreeMap<>(), shown),
            Approvals.none(),
            on);
    SortedMap<String, OutputFile> files = new TreeMap<>(hanging);
    files.remove(Register.FILE);
    changed.forEach(each -> files.remove(each.path()));
    SiteRenderer.renderAfterWithdrawal(publication, List.copyOf(files.values()), changed)
        .forEach(file -> files.put(file.path(), file));
    RegisterEntry whole = entry.leaving(FileList.of(files.values()).fingerprint());
    List<OutputFile> all = new ArrayList<>(files.values());
    all.add(OutputFile.text(Register.FILE, register.with(whole).text()));
    return new After(all, whole);
  }
}
