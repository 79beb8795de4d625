package stackside.check;

final class ModeOnWrongPedalTest extends RuleFixtures {}
