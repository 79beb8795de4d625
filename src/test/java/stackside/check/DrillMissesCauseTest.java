package stackside.check;

final class DrillMissesCauseTest extends RuleFixtures {}
