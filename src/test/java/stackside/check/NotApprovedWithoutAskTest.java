package stackside.check;

final class NotApprovedWithoutAskTest extends RuleFixtures {}
