package stackside.check;

final class LevelUnknownTest extends RuleFixtures {}
