package stackside.check;

final class LimitOffStepTest extends RuleFixtures {}
