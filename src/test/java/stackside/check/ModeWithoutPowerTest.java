package stackside.check;

final class ModeWithoutPowerTest extends RuleFixtures {}
