package stackside.check;

final class FigureOutOfPlaceTest extends RuleFixtures {}
