package stackside.render.site;

import java.util.stream.Stream;

/** Makes all pages of one kind. */
interface Pages {
  Stream<Page> of(Website site);
}
