package stackside.model;

/**
 * The approved answer: settings, no current, or not approved. Every question has an answer or is a
 * named gap.
 */
public sealed interface Answer permits Settings, Cold, NotApproved {}
