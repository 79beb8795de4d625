package stackside.render.site;

import com.esotericsoftware.kryo.Kryo;
import com.esotericsoftware.kryo.Serializer;
import com.esotericsoftware.kryo.io.Input;
import com.esotericsoftware.kryo.io.Output;
import com.esotericsoftware.kryo.util.DefaultInstantiatorStrategy;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.objenesis.strategy.StdInstantiatorStrategy;
import stackside.model.Unit;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RecordRenderer;
import stackside.render.plan.CardPlan;

/**
 * What a minimal program would have prepared: the records with which the templates are filled, the
 * plans from which the cards are painted, and the files that are only copied. One process writes
 * them to a file. Another reads them, fills the same templates, paints with the same PDF library,
 * and writes the same bytes.
 *
 * @param copied style sheets, scripts, fonts and the search index
 */
public record PreparedPages(
    List<Page> pages, List<OutputFile> copied, Publication publication, List<CardPlan> plans) {

  /** Makes all values. */
  public static PreparedPages of(Publication publication, List<CardPlan> plans) {
    Website site = new Website(publication, plans);
    List<OutputFile> copied = new ArrayList<>(StaticAssets.files(new Templates(publication.unit())));
    copied.add(SearchIndex.of(site));
    return new PreparedPages(SiteRenderer.pages(site).toList(), copied, publication, plans);
  }

  /** Saves the values to a file. */
  public void save(Path file) throws IOException {
    try (Output out = new Output(Files.newOutputStream(file))) {
      keeper().writeClassAndObject(out, this);
    }
  }

  /** Loads the saved values. */
  public static PreparedPages load(Path file) throws IOException {
    try (Input in = new Input(Files.newInputStream(file))) {
      return (PreparedPages) keeper().readClassAndObject(in);
    }
  }

  private static Kryo keeper() {
    Kryo kryo = new Kryo();
    kryo.setRegistrationRequired(false);
    kryo.setReferences(true);
    kryo.addDefaultSerializer(URI.class, new As<>(URI::toString, URI::create));
    kryo.addDefaultSerializer(
        Collections.unmodifiableMap(Map.of()).getClass(),
        new As<Map<?, ?>, Map<?, ?>>(LinkedHashMap::new, Collections::unmodifiableMap));
    kryo.addDefaultSerializer(
        Collections.unmodifiableSortedMap(new TreeMap<>()).getClass(),
        new As<SortedMap<Object, ?>, SortedMap<Object, ?>>(
            TreeMap::new, Collections::unmodifiableSortedMap));
    kryo.addDefaultSerializer(
        ownListOf(Unit.class), new As<List<?>, List<?>>(ArrayList::new, List::copyOf));
    kryo.setInstantiatorStrategy(new DefaultInstantiatorStrategy(new StdInstantiatorStrategy()));
    return kryo;
  }

  /** The class of the indexed lists that the model creates for itself. */
  private static Class<?> ownListOf(Class<?> model) {
    try {
      return Class.forName(model.getPackageName() + ".Related");
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException("the model has no list of its own any more", e);
    }
  }

  /** Saves a value as another one, and restores it from that. */
  private static final class As<T, K> extends Serializer<T> {
    private final Function<T, K> kept;
    private final Function<K, T> anew;

    As(Function<T, K> kept, Function<K, T> anew) {
      super(false, true);
      this.kept = kept;
      this.anew = anew;
    }

    @Override
    public void write(Kryo kryo, Output out, T value) {
      kryo.writeClassAndObject(out, kept.apply(value));
    }

    @Override
    @SuppressWarnings("unchecked") // reads what was written
    public T read(Kryo kryo, Input in, Class<? extends T> type) {
      return anew.apply((K) kryo.readClassAndObject(in));
    }
  }

  /** Fills, paints and writes everything. */
  public void write(Path folder) throws IOException {
    Templates templates = new Templates(publication.unit());
    List<OutputFile> files = new ArrayList<>(copied);
    files.addAll(pages.stream().parallel().map(templates::fill).toList());
    files.addAll(CardRenderer.render(publication, plans).files());
    files.addAll(RecordRenderer.render(publication));
    for (OutputFile file : files) {
      Path path = folder.resolve(file.path());
      Files.createDirectories(path.getParent());
      Files.write(path, file.bytes());
    }
  }
}
