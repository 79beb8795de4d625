package stackside.check;

final class ArgonFlowFarOffTest extends RuleFixtures {}
