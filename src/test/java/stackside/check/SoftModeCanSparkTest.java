package stackside.check;

final class SoftModeCanSparkTest extends RuleFixtures {}
