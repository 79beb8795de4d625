package stackside.publish;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stackside.source.SizeLimit;

/** Publishing failed. The message is for the person at the keyboard. */
public final class PublishFailure extends IOException {
  private static final long serialVersionUID = 1;

  /** The reason, where it decides the exit status of the command. */
  public enum Reason {
    /** The folder holds something that Stackside did not make. */
    NOT_OURS,
    /** Another run is using the folder. */
    BUSY,
    /** The disk refused. */
    DISK
  }

  private static final List<Map.Entry<String, String>> KNOWN =
      List.of(
          Map.entry("no space left", "the disk is full"),
          Map.entry("not enough space", "the disk is full"),
          Map.entry("quota exceeded", "the disk quota is used up"),
          Map.entry("read-only file system", "the disk is read-only"),
          Map.entry("device or resource busy", "something else is using the folder"));

  private final Reason reason;

  private PublishFailure(Reason reason, String message, Optional<IOException> cause) {
    super(message, cause.orElse(null));
    this.reason = reason;
  }

  static PublishFailure notOurs(String message) {
    return new PublishFailure(Reason.NOT_OURS, message, Optional.empty());
  }

  /** A file in the place of one of ours is larger than any that Stackside makes. */
  public static PublishFailure tooLarge(Path file) {
    return notOurs(
        file
            + " is "
            + SizeLimit.MADE.exceeded()
            + ", and Stackside makes no file that large; restore it from a copy");
  }

  static PublishFailure busy(Path folder) {
    return new PublishFailure(
        Reason.BUSY,
        "another run of Stackside is writing to " + folder + "; wait for it to end, then try again",
        Optional.empty());
  }

  /** The disk refused. The state says where the earlier files are now. */
  static PublishFailure disk(IOException cause, Path folder, String state) {
    return new PublishFailure(
        Reason.DISK,
        "cannot write to " + folder + ": " + words(cause) + ". " + state,
        Optional.of(cause));
  }

  public Reason reason() {
    return reason;
  }

  /** Why a disk refused and which file it refused, as far as the exception says. */
  public static String words(IOException cause) {
    String detail =
        cause instanceof FileSystemException e && e.getReason() != null
            ? e.getReason()
            : String.valueOf(cause.getMessage());
    String known = detail.toLowerCase(Locale.ROOT);
    String file =
        cause instanceof FileSystemException e && e.getFile() != null
            ? " (" + e.getFile() + ")"
            : "";
    if (cause instanceof AccessDeniedException || known.contains("permission denied")) {
      return "no permission" + file;
    }
    return KNOWN.stream()
        .filter(entry -> known.contains(entry.getKey()))
        .map(entry -> entry.getValue() + file)
        .findFirst()
        .orElse(detail + file);
  }
}
