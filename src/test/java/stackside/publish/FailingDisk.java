package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stackside.source.SizeLimit;

/** A disk on which one chosen operation fails: before it is done, after, or half done. */
public final class FailingDisk implements Disk {

  /** Where in the chosen operation it fails. */
  public enum Moment {
    BEFORE,
    HALFWAY,
    AFTER
  }

  /** What the disk does after the failure. */
  public enum Then {
    WORKS_AGAIN,
    STAYS_DEAD
  }

  private final Disk disk = new LocalDisk();
  private final int chosen;
  private final Moment moment;
  private final Then then;
  private final List<Closeable> locks = new ArrayList<>();
  private final List<Done> done = new ArrayList<>();
  private int operations;
  private boolean failed;

  /** An operation that was asked for. */
  public record Done(String name, Path path) {}

  public FailingDisk(int chosen, Moment moment, Then then) {
    this.chosen = chosen;
    this.moment = moment;
    this.then = then;
  }

  /** All operations that were asked for, in order. */
  public List<Done> done() {
    return List.copyOf(done);
  }

  @Override
  public String toString() {
    return "%s operation %d %s, %s"
        .formatted(moment, chosen, operations < chosen ? "(none)" : done.get(chosen - 1), then);
  }

  public int operations() {
    return operations;
  }

  public boolean failed() {
    return failed;
  }

  public boolean worksAgain() {
    return then == Then.WORKS_AGAIN;
  }

  /** What the system does for a process that ended. */
  public void giveLocksBack() throws IOException {
    for (Closeable lock : locks) {
      lock.close();
    }
  }

  private interface Operation<T> {
    T run() throws IOException;
  }

  private interface Half {
    void run() throws IOException;
  }

  private <T> T run(String name, Path path, Operation<T> operation) throws IOException {
    return run(name, path, operation, () -> {});
  }

  private <T> T run(String name, Path path, Operation<T> operation, Half half) throws IOException {
    operations++;
    done.add(new Done(name, path));
    if (failed && then == Then.STAYS_DEAD) {
      throw new FileSystemException(path.toString(), null, "dead before " + name);
    }
    boolean now = operations == chosen;
    failed |= now;
    if (now && moment == Moment.BEFORE) {
      throw new FileSystemException(path.toString(), null, "failed before " + name);
    }
    if (now && moment == Moment.HALFWAY) {
      half.run();
      throw new FileSystemException(path.toString(), null, "failed in " + name);
    }
    T result = operation.run();
    if (now) {
      throw new FileSystemException(path.toString(), null, "failed after " + name);
    }
    return result;
  }

  @Override
  public Entry at(Path path) throws IOException {
    return run("at", path, () -> disk.at(path));
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    return run("list", folder, () -> disk.list(folder));
  }

  @Override
  public Optional<byte[]> read(Path file, SizeLimit limit) throws IOException {
    return run("read", file, () -> disk.read(file, limit));
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    run("createFolder", folder, () -> done(() -> disk.createFolder(folder)));
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    run(
        "write",
        file,
        () -> done(() -> disk.write(file, bytes)),
        () -> Files.write(file, Arrays.copyOf(bytes, bytes.length / 2)));
  }

  @Override
  public void link(Path existing, Path second) throws IOException {
    run("link", existing, () -> done(() -> disk.link(existing, second)));
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    run("move", from, () -> done(() -> disk.move(from, to)));
  }

  @Override
  public void delete(Path path) throws IOException {
    run("delete", path, () -> done(() -> disk.delete(path)));
  }

  @Override
  public void flush(Path folder) throws IOException {
    run("flush", folder, () -> done(() -> disk.flush(folder)));
  }

  @Override
  public Path real(Path link) throws IOException {
    return run("real", link, () -> disk.real(link));
  }

  @Override
  public Optional<Closeable> lock(Path file) throws IOException {
    return run(
        "lock",
        file,
        () -> {
          Optional<Closeable> lock = disk.lock(file);
          lock.ifPresent(locks::add);
          return lock;
        });
  }

  private static String done(Half operation) throws IOException {
    operation.run();
    return "done";
  }
}
