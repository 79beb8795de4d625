package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import stackside.source.SizeLimit;

/**
 * A disk that does not wait until its bytes have arrived, for tests that ask what was written and
 * not whether it outlives a power cut.
 */
public final class HastyDisk implements Disk {
  private final Disk disk = new LocalDisk();

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
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    Files.write(file, bytes, StandardOpenOption.CREATE_NEW);
  }

  @Override
  public void link(Path existing, Path second) throws IOException {
    disk.link(existing, second);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    disk.move(from, to);
  }

  @Override
  public void delete(Path path) throws IOException {
    disk.delete(path);
  }

  @Override
  public void flush(Path folder) {
    // Nobody cuts the power in these tests.
  }

  @Override
  public Path real(Path link) throws IOException {
    return disk.real(link);
  }

  @Override
  public Optional<Closeable> lock(Path file) throws IOException {
    return disk.lock(file);
  }
}
