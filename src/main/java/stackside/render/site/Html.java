package stackside.render.site;

/** Finished HTML, which templates print unchanged. Made only from prose and drawings. */
public record Html(String markup) {}
