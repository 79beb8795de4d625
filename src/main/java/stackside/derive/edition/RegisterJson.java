package stackside.derive.edition;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.derive.signed.Deed;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;

/** The register as JSON, and back. */
final class RegisterJson {
  private static final int FORMAT = 2;

  private RegisterJson() {}

  static Json of(Register register) {
    return Json.members(
        Map.of(
            "format",
            Json.number(FORMAT),
            "entries",
            Json.items(register.lines().stream().map(RegisterJson::of).toList())));
  }

  private static Json of(Register.Line line) {
    Map<String, Json> members = written(line.entry());
    members.put("seal", Json.text(line.seal().text()));
    return Json.members(members);
  }

  /** What the seal of an entry covers: the entry, and the seal before it. */
  static Json.Members sealed(Optional<Fingerprint> before, RegisterEntry entry) {
    Map<String, Json> members = written(entry);
    members.put("before", Json.text(before.map(Fingerprint::text).orElse("")));
    return Json.members(members);
  }

  static Register.Sealed sealed(Json.Members members) throws DamagedRegister {
    Optional<Fingerprint> before =
        text(members, "before").isEmpty()
            ? Optional.empty()
            : Optional.of(fingerprint(members, "before"));
    return new Register.Sealed(before, entry(members));
  }

  private static Map<String, Json> written(RegisterEntry entry) {
    Map<String, Json> members = new TreeMap<>();
    members.put("deed", Json.text(entry.deed().word()));
    members.put("number", Json.number(entry.number()));
    members.put("on", Json.text(entry.on().toString()));
    entry.by().ifPresent(role -> members.put("by", Json.text(role)));
    entry.ledger().ifPresent(seal -> members.put("ledger", Json.text(seal.text())));
    entry.manifest().ifPresent(seal -> members.put("manifest", Json.text(seal.text())));
    entry.files().ifPresent(list -> members.put("files", Json.text(list.text())));
    put(members, "cards", entry.cards().stream().map(RegisterJson::of).toList());
    put(members, "stops", entry.stops().stream().map(RegisterJson::of).toList());
    put(members, "lifted", entry.lifted().stream().map(Json::text).toList());
    put(members, "records", entry.records().stream().map(RegisterJson::of).toList());
    if (!entry.why().isEmpty()) {
      members.put("why", Json.text(entry.why()));
    }
    return members;
  }

  private static void put(Map<String, Json> members, String name, List<Json> values) {
    if (!values.isEmpty()) {
      members.put(name, Json.items(values));
    }
  }

  private static Json of(Stop stop) {
    Map<String, Json> members = new TreeMap<>();
    members.put("what", Json.text(stop.what()));
    members.put("why", Json.text(stop.why()));
    stop.role().ifPresent(role -> members.put("by", Json.text(role)));
    members.put("since", Json.text(stop.since().toString()));
    return Json.members(members);
  }

  private static Json of(KeptRecord record) {
    Map<String, Json> cells = new TreeMap<>();
    record.cells().forEach((column, text) -> cells.put(column, Json.text(text)));
    return Json.members(Map.of("file", Json.text(record.file()), "cells", Json.members(cells)));
  }

  private static Json of(CardEntry card) {
    Map<String, Json> members = new TreeMap<>();
    members.put("name", Json.text(card.name()));
    members.put("code", Json.text(card.code()));
    members.put("title", Json.text(card.title()));
    members.put("room", Json.text(card.room()));
    members.put("asset", Json.text(card.asset()));
    members.put("path", Json.text(card.path()));
    members.put("copies", Json.number(card.copies()));
    members.put("edition", Json.number(card.edition()));
    members.put("fingerprint", Json.text(card.fingerprint()));
    members.put("since", Json.text(card.since().toString()));
    card.review().ifPresent(day -> members.put("review", Json.text(day.toString())));
    card.approval()
        .ifPresent(
            approval -> {
              members.put("approved", Json.text(approval.day().toString()));
              members.put(
                  "approved-by", Json.items(approval.roles().stream().map(Json::text).toList()));
            });
    members.put("state", Json.text(card.state().word()));
    members.put("reason", Json.text(card.reason()));
    return Json.members(members);
  }

  static Register read(String text) throws DamagedRegister {
    Json json = parsed(text);
    if (!(json instanceof Json.Members members)
        || members.member("format").filter(Json.number(FORMAT)::equals).isEmpty()) {
      throw new DamagedRegister("it is of a format that this version does not know");
    }
    Register register = Register.none();
    for (Json each : items(members, "entries")) {
      Json.Members written = members(each);
      register = register.with(entry(written));
      if (!register.head().equals(Optional.of(fingerprint(written, "seal")))) {
        throw new DamagedRegister(
            "entry "
                + register.lines().size()
                + " is not as it was written: its seal does not fit");
      }
    }
    if (!register.text().equals(text)) {
      throw new DamagedRegister("it is not as it was written");
    }
    return register;
  }

  private static Json parsed(String text) throws DamagedRegister {
    try {
      return JsonReader.read(text);
    } catch (JsonReader.Unreadable e) {
      throw new DamagedRegister("it cannot be read: " + e.getMessage());
    }
  }

  private static RegisterEntry entry(Json.Members members) throws DamagedRegister {
    List<CardEntry> cards = new ArrayList<>();
    for (Json each : several(members, "cards")) {
      cards.add(card(members(each)));
    }
    List<Stop> stops = new ArrayList<>();
    for (Json each : several(members, "stops")) {
      stops.add(stop(members(each)));
    }
    List<KeptRecord> records = new ArrayList<>();
    for (Json each : several(members, "records")) {
      records.add(record(members(each)));
    }
    return new RegisterEntry(
        deed(members),
        number(members, "number"),
        date(members, "on"),
        members.text("by"),
        seal(members, "ledger"),
        seal(members, "manifest"),
        seal(members, "files"),
        cards,
        stops,
        texts(members, "lifted"),
        records,
        members.text("why").orElse(""));
  }

  private static Deed deed(Json.Members members) throws DamagedRegister {
    String word = text(members, "deed");
    return Deed.named(word)
        .orElseThrow(() -> new DamagedRegister("'" + word + "' is nothing that can be done"));
  }

  private static Optional<Fingerprint> seal(Json.Members members, String name)
      throws DamagedRegister {
    return members.member(name).isPresent()
        ? Optional.of(fingerprint(members, name))
        : Optional.empty();
  }

  private static List<Json> several(Json.Members members, String name) throws DamagedRegister {
    return members.member(name).isPresent() ? items(members, name) : List.of();
  }

  private static List<String> texts(Json.Members members, String name) throws DamagedRegister {
    List<String> texts = new ArrayList<>();
    for (Json each : several(members, name)) {
      if (!(each instanceof Json.Text text)) {
        throw new DamagedRegister("'" + name + "' is no list of texts");
      }
      texts.add(text.value());
    }
    return texts;
  }

  private static Stop stop(Json.Members members) throws DamagedRegister {
    return new Stop(
        text(members, "what"), text(members, "why"), members.text("by"), date(members, "since"));
  }

  private static KeptRecord record(Json.Members record) throws DamagedRegister {
    SortedMap<String, String> cells = new TreeMap<>();
    Json.Members written = members(record.member("cells").orElse(Json.text("")));
    for (String column : written.values().keySet()) {
      cells.put(column, text(written, column));
    }
    return new KeptRecord(text(record, "file"), cells);
  }

  private static CardEntry card(Json.Members members) throws DamagedRegister {
    return new CardEntry(
        text(members, "name"),
        text(members, "code"),
        text(members, "title"),
        text(members, "room"),
        text(members, "asset"),
        text(members, "path"),
        number(members, "copies"),
        number(members, "edition"),
        text(members, "fingerprint"),
        date(members, "since"),
        members.text("review").isPresent()
            ? Optional.of(date(members, "review"))
            : Optional.empty(),
        members.text("approved").isPresent()
            ? Optional.of(new Approval(date(members, "approved"), texts(members, "approved-by")))
            : Optional.empty(),
        text(members, "state").equals("current")
            ? CardEntry.State.CURRENT
            : CardEntry.State.OUT_OF_USE,
        text(members, "reason"));
  }

  private static Json.Members members(Json json) throws DamagedRegister {
    if (json instanceof Json.Members members) {
      return members;
    }
    throw new DamagedRegister("it lacks a part");
  }

  private static List<Json> items(Json.Members members, String name) throws DamagedRegister {
    if (members.member(name).orElse(Json.text("")) instanceof Json.Items items) {
      return items.values();
    }
    throw new DamagedRegister("it lacks '" + name + "'");
  }

  private static String text(Json.Members members, String name) throws DamagedRegister {
    Optional<String> text = members.text(name);
    if (text.isEmpty()) {
      throw new DamagedRegister("it lacks '" + name + "'");
    }
    return text.get();
  }

  private static int number(Json.Members members, String name) throws DamagedRegister {
    if (members.member(name).orElse(Json.text("")) instanceof Json.Numeral number) {
      return (int) number.value();
    }
    throw new DamagedRegister("it lacks '" + name + "'");
  }

  private static LocalDate date(Json.Members members, String name) throws DamagedRegister {
    try {
      return LocalDate.parse(text(members, name));
    } catch (DateTimeException e) {
      throw new DamagedRegister("'" + name + "' is no date");
    }
  }

  private static Fingerprint fingerprint(Json.Members members, String name) throws DamagedRegister {
    String text = text(members, name);
    if (!Fingerprint.isFingerprint(text)) {
      throw new DamagedRegister("'" + name + "' is no fingerprint");
    }
    return new Fingerprint(text);
  }
}
