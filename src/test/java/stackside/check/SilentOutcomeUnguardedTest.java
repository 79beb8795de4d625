package stackside.check;

final class SilentOutcomeUnguardedTest extends RuleFixtures {}
