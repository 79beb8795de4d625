package stackside.check;

final class PedalColourUnusualTest extends RuleFixtures {}
