package stackside.check;

final class FootSwitchMissingTest extends RuleFixtures {}
