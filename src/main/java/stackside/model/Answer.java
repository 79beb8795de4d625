package stackside.model;

/**
 * What is approved: settings, working cold, or not at all. An answer always exists or is a named
 * gap.
 */
public sealed interface Answer permits Settings, Cold, NotApproved {}
