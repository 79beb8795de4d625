package stackside.check;

final class CheckOutOfOrderTest extends RuleFixtures {}
