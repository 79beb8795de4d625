package stackside.check;

final class LesionOfferedTwiceTest extends RuleFixtures {}
