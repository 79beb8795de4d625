package stackside.check;

final class ElectrodeNotSplitTest extends RuleFixtures {}
