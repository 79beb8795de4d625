package stackside.check;

final class VoltageAboveRatingTest extends RuleFixtures {}
