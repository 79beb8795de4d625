package stackside.check;

final class ArgonDrillMissingTest extends RuleFixtures {}
