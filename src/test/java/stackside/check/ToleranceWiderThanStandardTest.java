package stackside.check;

final class ToleranceWiderThanStandardTest extends RuleFixtures {}
