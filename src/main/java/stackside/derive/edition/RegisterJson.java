package stackside.derive.edition;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;

/** The register as JSON, and back. */
final class RegisterJson {
  private static final int FORMAT = 1;

  private RegisterJson() {}

  static Json of(Register register) {
    return Json.members(
        Map.of(
            "format",
            Json.number(FORMAT),
            "entries",
            Json.items(register.entries().stream().map(RegisterJson::of).toList())));
  }

  private static Json of(RegisterEntry entry) {
    Map<String, Json> members =
        sealed(
            entry.number(), entry.on(), entry.by(), entry.ledger(), entry.cards(), entry.records());
    members.put("seal", Json.text(entry.seal().text()));
    return Json.members(members);
  }

  private static Map<String, Json> sealed(
      int number,
      LocalDate on,
      Optional<String> by,
      Optional<Fingerprint> ledger,
      List<CardEntry> cards,
      List<KeptRecord> records) {
    Map<String, Json> members = new TreeMap<>();
    members.put("number", Json.number(number));
    members.put("on", Json.text(on.toString()));
    by.ifPresent(role -> members.put("by", Json.text(role)));
    ledger.ifPresent(seal -> members.put("ledger", Json.text(seal.text())));
    members.put("cards", Json.items(cards.stream().map(RegisterJson::of).toList()));
    if (!records.isEmpty()) {
      members.put("records", Json.items(records.stream().map(RegisterJson::of).toList()));
    }
    return members;
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
    members.put("asset", Json.text(card.asset()));
    members.put("path", Json.text(card.path()));
    members.put("copies", Json.number(card.copies()));
    members.put("edition", Json.number(card.edition()));
    members.put("fingerprint", Json.text(card.fingerprint()));
    members.put("since", Json.text(card.since().toString()));
    card.review().ifPresent(day -> members.put("review", Json.text(day.toString())));
    members.put("state", Json.text(card.state().word()));
    members.put("reason", Json.text(card.reason()));
    return Json.members(members);
  }

  static Fingerprint seal(
      Optional<Fingerprint> before,
      int number,
      LocalDate on,
      Optional<String> by,
      Optional<Fingerprint> ledger,
      List<CardEntry> cards,
      List<KeptRecord> records) {
    return Fingerprint.of(
        Json.items(
            List.of(
                Json.text(before.map(Fingerprint::text).orElse("")),
                Json.members(sealed(number, on, by, ledger, cards, records)))));
  }

  static Register read(String text) throws DamagedRegister {
    Json json = parsed(text);
    if (!(json instanceof Json.Members members)
        || members.member("format").filter(Json.number(FORMAT)::equals).isEmpty()) {
      throw new DamagedRegister("it is of a format that this version does not know");
    }
    List<RegisterEntry> entries = new ArrayList<>();
    Optional<Fingerprint> before = Optional.empty();
    for (Json each : items(members, "entries")) {
      RegisterEntry entry = entry(each);
      Fingerprint seal =
          seal(
              before,
              entry.number(),
              entry.on(),
              entry.by(),
              entry.ledger(),
              entry.cards(),
              entry.records());
      if (entry.number() != entries.size() + 1 || !seal.equals(entry.seal())) {
        throw new DamagedRegister(
            "entry " + (entries.size() + 1) + " is not as it was written: its seal does not fit");
      }
      entries.add(entry);
      before = Optional.of(seal);
    }
    Register register = new Register(entries);
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

  private static RegisterEntry entry(Json json) throws DamagedRegister {
    Json.Members members = members(json);
    List<CardEntry> cards = new ArrayList<>();
    for (Json each : items(members, "cards")) {
      cards.add(card(members(each)));
    }
    Optional<String> ledger = members.text("ledger");
    return new RegisterEntry(
        number(members, "number"),
        date(members, "on"),
        members.text("by"),
        ledger.isPresent() ? Optional.of(fingerprint(members, "ledger")) : Optional.empty(),
        cards,
        records(members),
        fingerprint(members, "seal"));
  }

  /** An entry that is older than the keeping of records has none. */
  private static List<KeptRecord> records(Json.Members entry) throws DamagedRegister {
    List<KeptRecord> records = new ArrayList<>();
    if (entry.member("records").isPresent()) {
      for (Json each : items(entry, "records")) {
        records.add(record(members(each)));
      }
    }
    return records;
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
        text(members, "asset"),
        text(members, "path"),
        number(members, "copies"),
        number(members, "edition"),
        text(members, "fingerprint"),
        date(members, "since"),
        members.text("review").isPresent()
            ? Optional.of(date(members, "review"))
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
