package stackside.check;

final class CoverageGapTest extends RuleFixtures {}
