package stackside.publish;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.source.SizeLimit;

/** The file operations of publishing, on any file system that the platform supports. */
public final class LocalDisk implements Disk {

  @Override
  public Entry at(Path path) throws IOException {
    try {
      BasicFileAttributes attributes =
          Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (attributes.isRegularFile()) {
        return Entry.FILE;
      }
      return attributes.isDirectory() ? Entry.FOLDER : Entry.OTHER;
    } catch (NoSuchFileException e) {
      return Entry.ABSENT;
    }
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    }
  }

  @Override
  public Optional<byte[]> read(Path file, SizeLimit limit) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return limit.read(stream);
    }
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    Files.createDirectory(folder);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  @Override
  public void link(Path existing, Path second) throws IOException {
    try {
      Files.createLink(second, existing);
    } catch (UnsupportedOperationException e) {
      throw new IOException("this file system does not support hard links", e);
    }
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  @Override
  public void delete(Path path) throws IOException {
    Files.delete(path);
  }

  /** Only POSIX systems can open a folder for this. On other systems this does nothing. */
  @Override
  public void flush(Path folder) throws IOException {
    if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }

  @Override
  public Path real(Path link) throws IOException {
    return link.toRealPath();
  }

  /**
   * Whoever waited for a file that its holder has deleted meanwhile holds a lock on nothing, and
   * begins again.
   */
  @Override
  public Optional<Closeable> lock(Path file) throws IOException {
    while (true) {
      create(file);
      Object key = key(file);
      FileChannel channel;
      try {
        channel = FileChannel.open(file, StandardOpenOption.WRITE);
      } catch (NoSuchFileException e) {
        continue;
      }
      boolean held = false;
      try {
        if (channel.tryLock() == null) {
          return Optional.empty();
        }
        held = key.equals(key(file));
        if (held) {
          return Optional.of(
              () -> {
                Files.deleteIfExists(file);
                channel.close();
              });
        }
      } catch (OverlappingFileLockException e) {
        return Optional.empty();
      } finally {
        if (!held) {
          channel.close();
        }
      }
    }
  }

  private static void create(Path file) throws IOException {
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException e) {
      // Somebody holds it, or a killed run left it behind; the lock tells which.
    }
  }

  /** What tells a file from another of the same name. */
  private static Object key(Path file) throws IOException {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      Object key = attributes.fileKey();
      return key == null ? attributes.creationTime() : key;
    } catch (NoSuchFileException e) {
      return "none";
    }
  }
}
