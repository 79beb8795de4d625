package stackside.check;

final class ProgramMissingTest extends RuleFixtures {}
