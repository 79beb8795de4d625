package stackside.check;

final class SignNeverShownTest extends RuleFixtures {}
