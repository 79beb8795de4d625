package stackside.check;

final class SparesPlaceMissingTest extends RuleFixtures {}
