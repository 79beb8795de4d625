package stackside.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.source.Location;

/**
 * A page of the handbook.
 *
 * @param name its first heading
 * @param text everything below that heading
 * @param remarks what the unit adds to a chapter of the program; absent on a page of its own
 * @param borrowed publications that the page cites and the program describes, not the unit
 */
public record HandbookPage(
    Location at,
    ThingId id,
    Fact<String> name,
    Prose text,
    Optional<Prose> remarks,
    List<Citation> borrowed)
    implements Thing {
  public HandbookPage {
    borrowed = List.copyOf(borrowed);
  }

  /** Stands before the names of the program's files, which are never those of a unit. */
  public static final String PROGRAM = "program/";

  /** Whether something stands in a file of the program and not of the unit. */
  public static boolean isOfTheProgram(Location at) {
    return at.file().startsWith(PROGRAM);
  }

  /** Whether the program wrote its text. */
  public boolean isChapter() {
    return remarks.isPresent();
  }

  /** The text, then the remarks. */
  public List<Prose> texts() {
    return Stream.concat(Stream.of(text), remarks.stream()).toList();
  }

  @Override
  public String title() {
    return name.value();
  }

  /** Hashes the id only; the full record is slow. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
