package stackside.inspect;

final class BannedTokenOnCardTest extends CardRuleFixtures {}
