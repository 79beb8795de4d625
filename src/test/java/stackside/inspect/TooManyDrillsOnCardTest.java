package stackside.inspect;

final class TooManyDrillsOnCardTest extends CardRuleFixtures {}
