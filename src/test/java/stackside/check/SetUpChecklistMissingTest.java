package stackside.check;

final class SetUpChecklistMissingTest extends RuleFixtures {}
