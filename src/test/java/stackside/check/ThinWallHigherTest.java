package stackside.check;

final class ThinWallHigherTest extends RuleFixtures {}
