package stackside.check;

final class SilentOutcomeUnmendedTest extends RuleFixtures {}
