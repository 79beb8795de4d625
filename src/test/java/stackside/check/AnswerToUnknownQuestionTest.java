package stackside.check;

final class AnswerToUnknownQuestionTest extends RuleFixtures {}
