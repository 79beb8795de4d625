package stackside.check;

final class SoftwareNotDescribedTest extends RuleFixtures {}
