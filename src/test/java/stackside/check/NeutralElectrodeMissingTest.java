package stackside.check;

final class NeutralElectrodeMissingTest extends RuleFixtures {}
