package stackside.check;

/**
 * A rule that asks: what it finds may be meant. A profile answers under {@code because}, by the
 * rule's id, and the rule is then silent about it.
 */
interface Question extends Rule {}
