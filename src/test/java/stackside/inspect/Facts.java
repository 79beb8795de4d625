package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The facts of a finished card with one of them changed. */
record Facts(Inspection inspection) {

  static Facts of(Inspection inspection) {
    return new Facts(inspection);
  }

  Facts withoutAreas() {
    return changed(List.of(), inspection.structure(), inspection.code());
  }

  Facts withoutCode() {
    return changed(inspection.areas(), inspection.structure(), Optional.empty());
  }

  Facts withCodeHalfAsLarge() {
    ReadCode code = inspection.code().orElseThrow();
    Box box = code.box();
    Box half =
        new Box(box.left(), box.top(), box.left() + box.width() / 2, box.top() + box.height() / 2);
    return changed(
        inspection.areas(),
        inspection.structure(),
        Optional.of(
            new ReadCode(code.text(), half, code.module() / 2, code.clear(), code.level())));
  }

  /** With one more element at the end. */
  Facts with(String role, String text) {
    List<StructureElement> structure = new ArrayList<>(inspection.structure());
    structure.add(new StructureElement(role, 4, text, Optional.empty(), Optional.empty()));
    return changed(inspection.areas(), structure, inspection.code());
  }

  private Facts changed(
      List<PaintedArea> areas, List<StructureElement> structure, Optional<ReadCode> code) {
    return new Facts(
        new Inspection(
            inspection.path(),
            inspection.pages(),
            inspection.width(),
            inspection.height(),
            inspection.words(),
            areas,
            inspection.fonts(),
            structure,
            code));
  }
}
