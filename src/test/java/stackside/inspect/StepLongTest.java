package stackside.inspect;

final class StepLongTest extends CardRuleFixtures {}
