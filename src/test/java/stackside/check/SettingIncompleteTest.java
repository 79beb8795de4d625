package stackside.check;

final class SettingIncompleteTest extends RuleFixtures {}
