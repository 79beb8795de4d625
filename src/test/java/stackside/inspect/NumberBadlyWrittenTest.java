package stackside.inspect;

final class NumberBadlyWrittenTest extends CardRuleFixtures {}
