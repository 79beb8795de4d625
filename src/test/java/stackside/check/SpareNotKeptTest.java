package stackside.check;

final class SpareNotKeptTest extends RuleFixtures {}
