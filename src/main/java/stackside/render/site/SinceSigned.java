package stackside.render.site;

import java.util.List;
import java.util.stream.Collectors;
import stackside.derive.standing.SignatureStanding;
import stackside.render.Mark;
import stackside.render.site.Part.Grid;

/** What has changed since it was signed, and therefore holds up the next issue. */
final class SinceSigned {
  private SinceSigned() {}

  static Section section(PageContext here) {
    List<Grid.GridRow> rows =
        here.site().standing().signatures().stream()
            .filter(each -> each.state() == SignatureStanding.State.CHANGED_SINCE)
            .map(each -> row(each, here))
            .toList();
    return here.section(
        "since-signed",
        rows.isEmpty()
            ? new Part.Say(RichLine.of(here.say("since-signed.none")))
            : new Grid(
                here.say("section.since-signed"),
                List.of(
                    here.say("column.what"), here.say("column.state"), here.say("column.missing")),
                rows));
  }

  private static Grid.GridRow row(SignatureStanding standing, PageContext here) {
    return Grid.GridRow.of(
        here.linkWithKind(standing.thing().id()),
        PageContext.status(Mark.TRIANGLE, here.say("signature." + standing.state().word())),
        RichLine.of(
            standing.missing().stream()
                .map(each -> each.role().title())
                .collect(Collectors.joining(", "))));
  }
}
