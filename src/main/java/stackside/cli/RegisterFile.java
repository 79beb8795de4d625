package stackside.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.SortedMap;
import stackside.derive.edition.DamagedRegister;
import stackside.derive.edition.Register;
import stackside.render.OutputFile;

/** Finds the register in the folder of the last issue. It is never begun anew unless asked for. */
final class RegisterFile {
  private RegisterFile() {}

  static Register in(SortedMap<String, OutputFile> files, Path folder) throws UsageException {
    OutputFile file = files.get(Register.FILE);
    if (file == null) {
      throw new UsageException(
          "there is no register of earlier issues in "
              + folder
              + "; bring the folder back from a copy, or, if this unit never issued anything,"
              + " say so with --first");
    }
    try {
      return Register.read(new String(file.bytes(), StandardCharsets.UTF_8));
    } catch (DamagedRegister e) {
      throw new UsageException(
          "the register "
              + folder.resolve(Register.FILE)
              + " cannot be trusted: "
              + e.getMessage()
              + "; bring the folder back from a copy");
    }
  }
}
