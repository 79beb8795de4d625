package stackside.check;

final class AssetNotFitForUseTest extends RuleFixtures {}
