package stackside.check;

final class AssetInTwoHospitalsTest extends RuleFixtures {}
