package stackside.check;

final class CableNotKeptTest extends RuleFixtures {}
