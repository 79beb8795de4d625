package stackside.inspect;

final class StepWithTwoActionsTest extends CardRuleFixtures {}
