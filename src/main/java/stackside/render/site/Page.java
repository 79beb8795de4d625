package stackside.render.site;

/** A page: all that its template sees. */
public interface Page {

  /** The name of its template. */
  String template();

  Frame frame();
}
