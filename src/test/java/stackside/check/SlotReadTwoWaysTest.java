package stackside.check;

final class SlotReadTwoWaysTest extends RuleFixtures {}
