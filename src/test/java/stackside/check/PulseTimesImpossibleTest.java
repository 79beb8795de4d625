package stackside.check;

final class PulseTimesImpossibleTest extends RuleFixtures {}
