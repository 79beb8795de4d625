package stackside.check;

final class ArgonCylinderUncheckedTest extends RuleFixtures {}
