package stackside.check;

final class NameTwiceTest extends RuleFixtures {}
