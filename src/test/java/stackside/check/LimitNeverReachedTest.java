package stackside.check;

final class LimitNeverReachedTest extends RuleFixtures {}
