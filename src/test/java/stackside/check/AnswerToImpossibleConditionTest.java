package stackside.check;

final class AnswerToImpossibleConditionTest extends RuleFixtures {}
