package stackside.check;

final class ModeOfWrongKindTest extends RuleFixtures {}
