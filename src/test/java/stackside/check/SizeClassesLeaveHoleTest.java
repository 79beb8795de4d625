package stackside.check;

final class SizeClassesLeaveHoleTest extends RuleFixtures {}
