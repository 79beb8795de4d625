package stackside.render.site;

/** Finished HTML, which a template prints as it is. Made from prose and from drawings only. */
public record Html(String markup) {}
