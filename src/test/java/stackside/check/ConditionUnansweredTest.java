package stackside.check;

final class ConditionUnansweredTest extends RuleFixtures {}
