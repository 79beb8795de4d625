package stackside.check;

final class ChecklistTwiceTest extends RuleFixtures {}
