package stackside.check;

final class LampUnknownTest extends RuleFixtures {}
