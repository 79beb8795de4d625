package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stackside.source.SizeLimit;

/**
 * A disk that remembers what was changed on it, so that a run can be lived through again in another
 * folder up to any of its steps, as if it had been killed there.
 */
public final class RecordedDisk implements Disk {
  private final Disk disk = new HastyDisk();
  private final Path root;
  private final List<Step> steps = new ArrayList<>();

  /** A change below a folder. */
  public interface Change {
    void in(Path folder) throws IOException;
  }

  /**
   * One change, and what is left where a kill comes in the midst of it.
   *
   * @param half absent where it happens in one go
   */
  public record Step(String name, Change whole, Optional<Change> half) {}

  public RecordedDisk(Path root) {
    this.root = root;
  }

  public List<Step> steps() {
    return List.copyOf(steps);
  }

  private String named(Path path) {
    return root.relativize(path.toAbsolutePath()).toString();
  }

  private void did(String what, Change change) {
    steps.add(new Step(what, change, Optional.empty()));
  }

  @Override
  public Entry at(Path path) throws IOException {
    return disk.at(path);
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    return disk.list(folder);
  }

  @Override
  public Optional<byte[]> read(Path file, SizeLimit limit) throws IOException {
    return disk.read(file, limit);
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    disk.createFolder(folder);
    String name = named(folder);
    did("create " + name, here -> Files.createDirectory(here.resolve(name)));
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    disk.write(file, bytes);
    String name = named(file);
    byte[] whole = bytes.clone();
    byte[] half = Arrays.copyOf(bytes, bytes.length / 2);
    steps.add(
        new Step(
            "write " + name,
            here -> Files.write(here.resolve(name), whole),
            Optional.of(here -> Files.write(here.resolve(name), half))));
  }

  @Override
  public void link(Path existing, Path second) throws IOException {
    disk.link(existing, second);
    String from = named(existing);
    String to = named(second);
    did("link " + to, here -> Files.createLink(here.resolve(to), here.resolve(from)));
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    disk.move(from, to);
    String old = named(from);
    String fresh = named(to);
    did("move " + fresh, here -> disk.move(here.resolve(old), here.resolve(fresh)));
  }

  @Override
  public void delete(Path path) throws IOException {
    disk.delete(path);
    String name = named(path);
    did("delete " + name, here -> Files.delete(here.resolve(name)));
  }

  @Override
  public void flush(Path folder) throws IOException {
    disk.flush(folder);
  }

  @Override
  public Path real(Path link) throws IOException {
    return disk.real(link);
  }

  /** The system gives the lock back to a killed run, and leaves its file. */
  @Override
  public Optional<Closeable> lock(Path file) throws IOException {
    Optional<Closeable> lock = disk.lock(file);
    String name = named(file);
    lock.ifPresent(held -> did("lock " + name, here -> create(here.resolve(name))));
    return lock.map(
        held ->
            () -> {
              held.close();
              did("unlock " + name, here -> Files.deleteIfExists(here.resolve(name)));
            });
  }

  private static void create(Path file) throws IOException {
    if (!Files.exists(file)) {
      Files.createFile(file);
    }
  }
}
