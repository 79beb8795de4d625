package stackside.check;

final class AnswerImpossibleTest extends RuleFixtures {}
