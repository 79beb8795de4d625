package stackside.check;

final class EvidenceMissingTest extends RuleFixtures {}
