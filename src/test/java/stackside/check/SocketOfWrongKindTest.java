package stackside.check;

final class SocketOfWrongKindTest extends RuleFixtures {}
