package stackside.check;

final class InstrumentCannotReachSocketTest extends RuleFixtures {}
