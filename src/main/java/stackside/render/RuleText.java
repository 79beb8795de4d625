package stackside.render;

import stackside.model.Prose;
import stackside.source.Fault;

/** A rule or a fault of reading, with the page that explains it. */
public record RuleText(Fault fault, Prose page) {}
