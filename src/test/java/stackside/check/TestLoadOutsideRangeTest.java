package stackside.check;

final class TestLoadOutsideRangeTest extends RuleFixtures {}
