package stackside.inspect;

final class TooManyRowsTest extends CardRuleFixtures {}
