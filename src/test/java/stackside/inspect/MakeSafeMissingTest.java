package stackside.inspect;

final class MakeSafeMissingTest extends CardRuleFixtures {}
