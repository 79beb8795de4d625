package stackside.check;

final class ElectrodeNotForPatientsTest extends RuleFixtures {}
