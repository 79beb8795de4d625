package stackside.check;

final class KindNeverSignedTest extends RuleFixtures {}
