package stackside.check;

final class SerratedLesionWithCurrentTest extends RuleFixtures {}
