package stackside.check;

final class ArgonFlowMissingTest extends RuleFixtures {}
