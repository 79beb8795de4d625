package stackside.check;

final class OnePedalUnsaidTest extends RuleFixtures {}
