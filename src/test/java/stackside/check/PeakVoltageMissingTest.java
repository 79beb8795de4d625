package stackside.check;

final class PeakVoltageMissingTest extends RuleFixtures {}
