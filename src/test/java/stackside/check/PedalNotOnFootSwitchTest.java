package stackside.check;

final class PedalNotOnFootSwitchTest extends RuleFixtures {}
