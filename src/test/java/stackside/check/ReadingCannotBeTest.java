package stackside.check;

final class ReadingCannotBeTest extends RuleFixtures {}
