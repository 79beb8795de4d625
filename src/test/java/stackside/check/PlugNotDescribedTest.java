package stackside.check;

final class PlugNotDescribedTest extends RuleFixtures {}
