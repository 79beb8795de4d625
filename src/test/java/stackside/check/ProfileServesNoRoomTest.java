package stackside.check;

final class ProfileServesNoRoomTest extends RuleFixtures {}
