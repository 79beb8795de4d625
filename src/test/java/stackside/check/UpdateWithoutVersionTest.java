package stackside.check;

final class UpdateWithoutVersionTest extends RuleFixtures {}
