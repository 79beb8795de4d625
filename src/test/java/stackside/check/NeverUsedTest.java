package stackside.check;

final class NeverUsedTest extends RuleFixtures {}
