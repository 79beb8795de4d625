package stackside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No chain of questions for the kinds of a sealed type may end in silence. */
final class ClosedKindsTest {

  @Test
  void everyChainOfTheProgramEndsInABranchThatThrows() throws IOException {
    try (StandardJavaFileManager files =
            ToolProvider.getSystemJavaCompiler().getStandardFileManager(null, null, null);
        Stream<Path> tree = Files.walk(Path.of("src/main/java"))) {
      List<Path> sources = tree.filter(file -> file.toString().endsWith(".java")).sorted().toList();
      ClosedKinds kinds = ClosedKinds.in(files.getJavaFileObjectsFromPaths(sources));
      assertThat(kinds.sealed())
          .contains("stackside.render.plan.Block", "stackside.model.Answer")
          .hasSizeGreaterThan(20);
      assertThat(kinds.silent()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "if (shape instanceof Shape.Disc) { return 1; } if (shape instanceof Box) { return 2; }"
            + " return 0;",
        "int n = 0; if (shape instanceof Disc d) { n = 1; } else if (shape instanceof Box b)"
            + " { n = 2; } return n;",
        "return shape instanceof Disc ? 1 : shape instanceof Box ? 2 : 3;",
        "return shape instanceof Disc || shape instanceof Box ? 1 : 0;",
        "boolean round = shape instanceof Disc; return shape instanceof Box ? 1 : 2;",
        "if (shape instanceof Disc) { throw new IllegalStateException(); }"
            + " return shape instanceof Box ? 1 : 2;",
        "return all.stream().mapToInt(each -> { if (each instanceof Disc) { return 1; }"
            + " if (each instanceof Half.Left) { return 2; } return 0; }).sum();"
      })
  void aSilentChainIsFound(String body) {
    assertThat(kinds(body).silent()).hasSize(1).first().asString().startsWith("Sample.java:5 ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "if (shape instanceof Disc) { return 1; } if (shape instanceof Box) { return 2; }"
            + " throw new IllegalStateException();",
        "if (shape instanceof Disc) { return 1; } else if (shape instanceof Box) { return 2; }"
            + " else { throw new IllegalStateException(); }",
        "if (!(shape instanceof Disc || shape instanceof Box))"
            + " { throw new IllegalStateException(); } return 1;",
        "return shape instanceof Disc ? 1 : shape instanceof Box ? 2 : side((Half) shape);",
        "return shape instanceof Disc ? 1 : 0;",
        "return shape instanceof Disc || other instanceof Box ? 1 : 0;",
        "return any instanceof Number ? 1 : any instanceof String ? 2 : 3;"
      })
  void aChainThatThrowsAndASingleQuestionAreNot(String body) {
    assertThat(kinds(body).silent()).isEmpty();
  }

  private static ClosedKinds kinds(String body) {
    return ClosedKinds.in(
        List.of(
            source(
                "Shape",
                "package drawn; public sealed interface Shape {\n"
                    + "record Disc() implements Shape {}\n"
                    + "sealed interface Half extends Shape {"
                    + " record Left() implements Half {} record Right() implements Half {} }\n"
                    + "}"),
            source("Box", "package drawn; public record Box() implements Shape {}"),
            source(
                "Sample",
                "package asks;\n"
                    + "import drawn.Box; import drawn.Shape;\n"
                    + "import drawn.Shape.Disc; import drawn.Shape.Half;\n"
                    + "final class Sample { int of(Shape shape, Shape other, Object any) {\n"
                    + body
                    + "\n} }")));
  }

  private static JavaFileObject source(String name, String text) {
    return new SimpleJavaFileObject(
        URI.create("string:///" + name + ".java"), JavaFileObject.Kind.SOURCE) {
      @Override
      public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return text;
      }
    };
  }
}
