package stackside.inspect;

final class StepWithoutVerbTest extends CardRuleFixtures {}
