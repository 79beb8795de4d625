package stackside.check;

final class InstrumentOfWrongKindTest extends RuleFixtures {}
