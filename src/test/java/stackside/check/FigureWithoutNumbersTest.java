package stackside.check;

final class FigureWithoutNumbersTest extends RuleFixtures {}
