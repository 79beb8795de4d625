package stackside.check;

final class SmallLesionWithCurrentTest extends RuleFixtures {}
