package stackside.check;

final class PatientGroupsOverlapTest extends RuleFixtures {}
