package stackside.check;

final class NeutralSocketMissingTest extends RuleFixtures {}
