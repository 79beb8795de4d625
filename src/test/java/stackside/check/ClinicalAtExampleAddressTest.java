package stackside.check;

final class ClinicalAtExampleAddressTest extends RuleFixtures {}
