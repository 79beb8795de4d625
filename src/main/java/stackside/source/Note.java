package stackside.source;

/** A second place that helps to understand a problem: where the limit stands, where the twin is. */
public record Note(Location at, String message) {}
