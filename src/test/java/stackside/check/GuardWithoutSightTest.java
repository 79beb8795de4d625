package stackside.check;

final class GuardWithoutSightTest extends RuleFixtures {}
