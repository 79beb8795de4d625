package stackside.check;

final class SettingWithoutControlTest extends RuleFixtures {}
