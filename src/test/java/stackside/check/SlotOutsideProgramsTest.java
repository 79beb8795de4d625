package stackside.check;

final class SlotOutsideProgramsTest extends RuleFixtures {}
