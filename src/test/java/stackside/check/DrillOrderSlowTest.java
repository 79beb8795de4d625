package stackside.check;

final class DrillOrderSlowTest extends RuleFixtures {}
