package stackside.inspect;

final class ManyStepsTest extends CardRuleFixtures {}
