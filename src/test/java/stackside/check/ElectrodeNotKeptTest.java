package stackside.check;

final class ElectrodeNotKeptTest extends RuleFixtures {}
