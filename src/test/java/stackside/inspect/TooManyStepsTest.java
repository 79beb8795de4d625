package stackside.inspect;

final class TooManyStepsTest extends CardRuleFixtures {}
