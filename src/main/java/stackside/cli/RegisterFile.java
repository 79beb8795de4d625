package stackside.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import stackside.derive.edition.DamagedRegister;
import stackside.derive.edition.Register;
import stackside.publish.Disk;
import stackside.publish.PublishFailure;
import stackside.render.OutputFile;
import stackside.source.SizeLimit;

/** Finds the register in the folder of the last issue. It is never begun anew unless asked for. */
final class RegisterFile {
  private RegisterFile() {}

  static Register in(SortedMap<String, OutputFile> files, Path folder) throws UsageException {
    OutputFile file = files.get(Register.FILE);
    if (file == null) {
      throw new UsageException(
          "there is no register of earlier issues in "
              + folder
              + "; restore the folder from a copy, or, if this unit never issued anything,"
              + " say so with --first");
    }
    return read(file.bytes(), folder);
  }

  private static Register read(byte[] bytes, Path folder) throws UsageException {
    try {
      return Register.read(new String(bytes, StandardCharsets.UTF_8));
    } catch (DamagedRegister e) {
      throw new UsageException(
          "the register "
              + folder.resolve(Register.FILE)
              + " cannot be trusted: "
              + e.getMessage()
              + "; restore the folder from a copy");
    }
  }

  /** The register of a site folder, for comparing with; absent where nothing was issued there. */
  static Optional<Register> beside(Disk disk, Path folder) throws IOException, UsageException {
    Path file = folder.resolve(Register.FILE);
    if (disk.at(file) != Disk.Entry.FILE) {
      return Optional.empty();
    }
    byte[] bytes = disk.read(file, SizeLimit.MADE).orElseThrow(() -> PublishFailure.tooLarge(file));
    return Optional.of(read(bytes, folder));
  }
}
