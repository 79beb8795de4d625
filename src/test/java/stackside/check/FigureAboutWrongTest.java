package stackside.check;

final class FigureAboutWrongTest extends RuleFixtures {}
