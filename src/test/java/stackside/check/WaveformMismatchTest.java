package stackside.check;

final class WaveformMismatchTest extends RuleFixtures {}
