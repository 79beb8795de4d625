package stackside.check;

final class PatientGroupsLeaveHoleTest extends RuleFixtures {}
