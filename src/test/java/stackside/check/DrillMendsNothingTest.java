package stackside.check;

final class DrillMendsNothingTest extends RuleFixtures {}
