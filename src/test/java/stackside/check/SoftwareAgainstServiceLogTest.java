package stackside.check;

final class SoftwareAgainstServiceLogTest extends RuleFixtures {}
