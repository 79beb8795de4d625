package stackside.source;

/**
 * A kind of mistake in content: a rule of the catalogue or a reading fault. Its id is printed in
 * brackets after each message, never changes, and is what {@code explain} takes.
 *
 * @param id the kind in kebab case, named after the fault
 * @param severity how serious a problem of this kind is
 * @param summary one line without a full stop
 */
public record Fault(String id, Severity severity, String summary) {
  public Fault {
    if (!id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("not a fault id: " + id);
    }
  }

  /** Creates a problem of this kind at a place. */
  public Problem at(Location at, String message) {
    return new Problem(this, at, message);
  }
}
