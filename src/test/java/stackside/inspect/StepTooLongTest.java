package stackside.inspect;

final class StepTooLongTest extends CardRuleFixtures {}
