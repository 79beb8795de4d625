package stackside.check;

final class SocketsInOnePlaceTest extends RuleFixtures {}
