package stackside.check;

final class SignWithTwoDrillsTest extends RuleFixtures {}
