package stackside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stackside.model.Broken;
import stackside.model.Fact;
import stackside.model.Prose;

/**
 * The records of the model that an author writes, found by reflection. Not written are what could
 * not be read, and the pieces into which prose falls, which are one text of its owner.
 */
public final class ModelRecords {
  /** Where the tests run from; that is another folder when Maven is called with -Dtest. */
  private static final Path CLASSES =
      Path.of(URI.create(Broken.class.getResource("Broken.class").toString())).getParent();

  private ModelRecords() {}

  /** The names of those components that are asked for, sorted. */
  public static List<String> components(
      Predicate<Class<?>> ofRecord, Predicate<RecordComponent> asked) {
    try (Stream<Path> files = Files.list(CLASSES)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".class") && !name.startsWith("package-info"))
          .<Class<?>>map(name -> load("stackside.model." + name.replace(".class", "")))
          .filter(ModelRecords::isWritten)
          .filter(ofRecord)
          .flatMap(
              type ->
                  Arrays.stream(type.getRecordComponents())
                      .filter(asked)
                      .map(part -> name(type, part)))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(name, e);
    }
  }

  /** Whether an author writes the components of this type. */
  public static boolean isWritten(Class<?> type) {
    return type.isRecord() && type != Broken.class && type != Fact.class && !isProse(type);
  }

  /** Prose and its pieces. */
  public static boolean isProse(Class<?> type) {
    return type == Prose.class || type.getName().startsWith(Prose.class.getName() + "$");
  }

  /** What a component of a record holds. */
  public static Object read(Object record, RecordComponent part) {
    try {
      part.getAccessor().setAccessible(true);
      return part.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(part.toString(), e);
    }
  }

  /** {@code Profile.cold}. */
  public static String name(Class<?> type, RecordComponent part) {
    return type.getSimpleName() + "." + part.getName();
  }
}
