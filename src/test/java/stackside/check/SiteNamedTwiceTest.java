package stackside.check;

final class SiteNamedTwiceTest extends RuleFixtures {}
