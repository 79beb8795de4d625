package stackside.check;

final class PublishedPointImpossibleTest extends RuleFixtures {}
