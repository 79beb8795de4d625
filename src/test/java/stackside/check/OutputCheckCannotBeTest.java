package stackside.check;

final class OutputCheckCannotBeTest extends RuleFixtures {}
