package stackside.check;

final class AssetInNoRoomTest extends RuleFixtures {}
