package stackside.check;

final class SelectionImpossibleTest extends RuleFixtures {}
