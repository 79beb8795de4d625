package stackside.inspect;

final class NamesAlikeTest extends CardRuleFixtures {}
