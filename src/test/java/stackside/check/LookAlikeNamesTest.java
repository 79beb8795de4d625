package stackside.check;

final class LookAlikeNamesTest extends RuleFixtures {}
