package stackside.inspect;

final class DrillWithoutSignTest extends CardRuleFixtures {}
