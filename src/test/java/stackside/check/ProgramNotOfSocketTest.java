package stackside.check;

final class ProgramNotOfSocketTest extends RuleFixtures {}
