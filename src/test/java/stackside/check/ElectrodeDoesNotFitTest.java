package stackside.check;

final class ElectrodeDoesNotFitTest extends RuleFixtures {}
