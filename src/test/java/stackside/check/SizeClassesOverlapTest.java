package stackside.check;

final class SizeClassesOverlapTest extends RuleFixtures {}
