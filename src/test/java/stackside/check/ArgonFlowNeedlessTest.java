package stackside.check;

final class ArgonFlowNeedlessTest extends RuleFixtures {}
