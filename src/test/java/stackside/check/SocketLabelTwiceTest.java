package stackside.check;

final class SocketLabelTwiceTest extends RuleFixtures {}
