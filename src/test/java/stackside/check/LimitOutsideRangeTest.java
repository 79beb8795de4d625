package stackside.check;

final class LimitOutsideRangeTest extends RuleFixtures {}
