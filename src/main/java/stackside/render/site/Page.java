package stackside.render.site;

/** A page, as its template sees it. */
public interface Page {

  /** The name of its template. */
  String template();

  PageFrame frame();
}
