package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** Walks the structure tree: which element each piece of content is in, and in which order. */
final class StructureReader {

  private final List<Node> nodes = new ArrayList<>();

  /** One element with the roles above it and the numbers of its pieces of content. */
  private record Node(
      List<String> roles,
      List<Integer> content,
      Optional<String> alternative,
      Optional<String> scope) {}

  private StructureReader() {}

  static StructureReader of(PDDocument document) {
    StructureReader reader = new StructureReader();
    PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
    if (root != null) {
      reader.walk(root.getKids(), List.of());
    }
    return reader;
  }

  private void walk(List<Object> kids, List<String> above) {
    for (Object kid : kids) {
      if (kid instanceof PDStructureElement element) {
        List<String> roles = new ArrayList<>(above);
        roles.add(element.getStructureType());
        nodes.add(
            new Node(
                List.copyOf(roles),
                content(element),
                Optional.ofNullable(element.getAlternateDescription()),
                scope(element)));
        walk(element.getKids(), roles);
      }
    }
  }

  private static List<Integer> content(PDStructureElement element) {
    List<Integer> numbers = new ArrayList<>();
    for (Object kid : element.getKids()) {
      if (kid instanceof Integer number) {
        numbers.add(number);
      } else if (kid instanceof PDMarkedContentReference reference) {
        numbers.add(reference.getMCID());
      }
    }
    return numbers;
  }

  private static Optional<String> scope(PDStructureElement element) {
    COSBase attributes = element.getCOSObject().getDictionaryObject(COSName.A);
    COSBase first =
        attributes instanceof COSArray array && array.size() > 0 ? array.getObject(0) : attributes;
    return first instanceof COSDictionary dictionary
        ? Optional.ofNullable(dictionary.getNameAsString("Scope"))
        : Optional.empty();
  }

  /** The roles over each piece of content, outermost first. */
  Map<Integer, List<String>> roles() {
    Map<Integer, List<String>> roles = new TreeMap<>();
    for (Node node : nodes) {
      node.content().forEach(number -> roles.put(number, node.roles()));
    }
    return roles;
  }

  /** The elements in reading order, with their words. */
  List<StructureElement> elements(Map<Integer, String> text) {
    List<StructureElement> elements = new ArrayList<>();
    for (Node node : nodes) {
      StringBuilder words = new StringBuilder();
      node.content().forEach(number -> words.append(text.getOrDefault(number, "")));
      elements.add(
          new StructureElement(
              node.roles().get(node.roles().size() - 1),
              node.roles().size(),
              words.toString().strip().replaceAll("\\s+", " "),
              node.alternative(),
              node.scope()));
    }
    return elements;
  }
}
