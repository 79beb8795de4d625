package stackside.check;

final class PolicyImplausibleTest extends RuleFixtures {}
