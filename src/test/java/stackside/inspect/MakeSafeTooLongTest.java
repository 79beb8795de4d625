package stackside.inspect;

final class MakeSafeTooLongTest extends CardRuleFixtures {}
