package stackside.check;

final class CutCannotSparkTest extends RuleFixtures {}
