package stackside.check;

final class PlugMovedUnderPowerTest extends RuleFixtures {}
