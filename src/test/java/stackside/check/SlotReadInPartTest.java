package stackside.check;

final class SlotReadInPartTest extends RuleFixtures {}
