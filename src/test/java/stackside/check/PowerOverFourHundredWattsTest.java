package stackside.check;

final class PowerOverFourHundredWattsTest extends RuleFixtures {}
