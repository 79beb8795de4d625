package stackside.check;

final class SlotWithTwoContentsTest extends RuleFixtures {}
