package stackside.inspect;

final class AnswerMissingFromCardTest extends CardRuleFixtures {}
