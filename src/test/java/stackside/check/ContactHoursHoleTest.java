package stackside.check;

final class ContactHoursHoleTest extends RuleFixtures {}
