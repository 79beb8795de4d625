package stackside.check;

final class EvidenceFromElsewhereTest extends RuleFixtures {}
