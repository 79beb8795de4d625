package stackside.check;

final class AmbiguousAnswerTest extends RuleFixtures {}
