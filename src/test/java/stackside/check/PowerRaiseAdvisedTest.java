package stackside.check;

final class PowerRaiseAdvisedTest extends RuleFixtures {}
