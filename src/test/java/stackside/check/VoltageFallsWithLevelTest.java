package stackside.check;

final class VoltageFallsWithLevelTest extends RuleFixtures {}
