package stackside.inspect;

final class DrillBranchesTest extends CardRuleFixtures {}
