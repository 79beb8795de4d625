package stackside.check;

final class PhoneUnusableTest extends RuleFixtures {}
