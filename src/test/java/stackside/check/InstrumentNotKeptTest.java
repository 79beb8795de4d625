package stackside.check;

final class InstrumentNotKeptTest extends RuleFixtures {}
