package stackside.check;

final class FigureUnknownTest extends RuleFixtures {}
