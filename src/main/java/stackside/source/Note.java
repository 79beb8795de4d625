package stackside.source;

/** A second place that helps to explain a problem: where the limit is given, or the duplicate. */
public record Note(Location at, String message) {}
