package stackside.check;

final class SignWithoutDrillTest extends RuleFixtures {}
