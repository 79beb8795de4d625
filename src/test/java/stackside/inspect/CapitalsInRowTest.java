package stackside.inspect;

final class CapitalsInRowTest extends CardRuleFixtures {}
