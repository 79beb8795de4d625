package stackside.check;

final class TestSparkAdvisedTest extends RuleFixtures {}
