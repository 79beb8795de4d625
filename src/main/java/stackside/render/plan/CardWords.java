package stackside.render.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.edition.Editions;
import stackside.model.Asset;
import stackside.model.CardPart;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.Contact;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.Machine;
import stackside.model.PedalColour;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Sentence;
import stackside.model.Thing;
import stackside.model.Unit;
import stackside.render.Dates;
import stackside.render.Numbers;
import stackside.render.Publication;
import stackside.source.Location;

/** The blocks of the cards of one edition, in words. */
final class CardWords {

  /** Space for the copy number, written by hand before lamination. */
  private static final String BLANK = "____";

  private final Publication publication;
  private final Unit unit;
  private final ApprovalWords approval;
  private final DrillsOnCard drills;

  CardWords(Publication publication) {
    this.publication = publication;
    this.unit = publication.unit();
    this.approval = new ApprovalWords(publication);
    this.drills = new DrillsOnCard(unit, publication.analysis().circuits());
  }

  Block identity(Room room, Asset asset, Face face, Optional<CardPart> part) {
    String title =
        say("card.face-" + face.word()) + part.map(each -> ", " + each.name().value()).orElse("");
    return new Block.Identity(
        Phrase.of(room.name()),
        Phrase.of(machine(asset).name()),
        new Phrase(asset.id().slug(), asset.at()),
        new Phrase(title, part.map(CardPart::at).orElse(room.at())),
        new Phrase(say("card.asset-differs"), room.at()));
  }

  /** Absent on an issued card of a clinical unit. */
  Optional<Block> marks(Room room) {
    List<Phrase> marks = new ArrayList<>();
    if (publication.draft()) {
      marks.add(new Phrase(say("card.mark-draft"), room.at()));
    }
    if (publication.demonstration()) {
      marks.add(new Phrase(say("card.mark-demonstration"), room.at()));
    }
    return marks.isEmpty() ? Optional.empty() : Optional.of(new Block.Marks(marks));
  }

  /** Absent if the unit has not stated it; a rule reports that. */
  Optional<Block> makeSafe() {
    List<Phrase> lines = unit.details().makeSafe().stream().map(Phrase::of).toList();
    return lines.isEmpty() ? Optional.empty() : Optional.of(new Block.MakeSafe(lines));
  }

  Block maps(Room room, Asset asset, List<Profile> answers) {
    return new MapsOfRoom(publication).of(room, asset, answers);
  }

  Block answers(Room room, AnswerRows answers) {
    Location at = room.at();
    return new Block.Answers(
        Stream.concat(
                Stream.of("program", "socket", "instrument"),
                answers.pedals().stream().map(PedalColour::word))
            .map(column -> new Phrase(say("card.column-" + column), at))
            .toList(),
        answers.rows());
  }

  Block setUp(Room room, Asset asset) {
    List<StepLine> lines = new ArrayList<>();
    setUpLists(asset).stream()
        .map(Checklist::steps)
        .flatMap(List::stream)
        .forEach(
            step ->
                lines.add(
                    new StepLine(
                        lines.size() + 1,
                        StepLine.Part.CHECK,
                        Phrase.of(step.action()),
                        step.see().map(Phrase::of))));
    return new Block.SetUp(new Phrase(say("card.set-up"), room.at()), lines);
  }

  List<Block> drills(Room room, Asset asset) {
    return drills.of(room, asset).stream()
        .map(drill -> drill(drill, room, machine(asset)))
        .toList();
  }

  private List<Checklist> setUpLists(Asset asset) {
    return unit.checklistsFor(machine(asset)).stream()
        .filter(list -> list.kind().value() == ChecklistKind.SET_UP)
        .toList();
  }

  private Block drill(Drill drill, Room room, Machine machine) {
    List<StepLine> lines = new ArrayList<>();
    lines.add(
        new StepLine(1, StepLine.Part.MAKE_SAFE, Phrase.of(drill.makeSafe()), Optional.empty()));
    drill
        .checks()
        .forEach(
            check ->
                lines.add(
                    new StepLine(
                        lines.size() + 1,
                        StepLine.Part.CHECK,
                        Phrase.of(check.action()),
                        check.see().map(Phrase::of))));
    lines.add(lastStep(drill, room, lines.size() + 1));
    return new Block.Drilled(
        Phrase.of(drill.name()),
        new Phrase(SignWords.of(drill.sign(), machine, publication.words()), drill.sign().at()),
        drill.never().map(never -> never(never)),
        lines);
  }

  private Phrase never(Fact<String> never) {
    String words = Sentence.within(never.value());
    return Phrase.of(
        words.startsWith(say("card.never-begins") + " ") ? never.value() : say("card.never", words),
        never.at());
  }

  private StepLine lastStep(Drill drill, Room room, int number) {
    Location at = drill.escalate().at();
    return drill.escalate().value()
        ? new StepLine(
            number,
            StepLine.Part.ESCALATE,
            new Phrase(say("card.not-mended", numbers(room)), at),
            Optional.empty())
        : new StepLine(
            number, StepLine.Part.END, new Phrase(say("card.carry-on"), at), Optional.empty());
  }

  private String numbers(Room room) {
    return publication
        .words()
        .either(called(room).stream().map(each -> each.phone().value()).toList());
  }

  Block contacts(Room room) {
    return new Block.Contacts(
        called(room).stream()
            .map(
                each ->
                    new Block.Contacts.Call(
                        Phrase.of(each.phone()),
                        Phrase.of(each.role()),
                        Phrase.of(
                            WordLists.asSentence(each.hours().value().words())
                                .replaceFirst("\\.$", ""),
                            each.hours().at())))
            .toList());
  }

  private static List<Contact> called(Room room) {
    return room.location().value().contacts();
  }

  /** The footer; the words after the location follow from the edition and its approval. */
  Block footer(Room room, Editions.Edition edition, String print) {
    List<String> lines = new ArrayList<>();
    lines.add(room.location().value().title() + ".");
    lines.add(
        publication.draft()
            ? say(
                "card.draft-of", edition.words(), Dates.day(publication.on(), publication.words()))
            : say(
                "card.edition-of",
                edition.words(),
                Dates.day(edition.since(), publication.words())));
    lines.addAll(approval.of(edition));
    lines.add(say("card.copy", BLANK, room.copies().value()).replace(' ', Numbers.BOUND));
    lines.add(say("card.destroy"));
    lines.add(say("card.fingerprint", print).replace(' ', Numbers.BOUND));
    return new Block.Footer(lines.stream().map(line -> new Phrase(line, room.at())).toList());
  }

  /** What the set-up face shows, apart from the machine and the room. */
  List<Thing> instructions(Room room, Asset asset) {
    List<Thing> things = new ArrayList<>();
    things.addAll(setUpLists(asset));
    things.addAll(drills.of(room, asset));
    return things;
  }

  Block code(Room room, String address, String held) {
    return new Block.Code(
        new Phrase(say("card.is-current"), room.at()), new Phrase(address, room.at()), held);
  }

  private String say(String key, Object... values) {
    return publication.words().say(key, values);
  }

  private static Machine machine(Asset asset) {
    return asset.machine().value();
  }
}
