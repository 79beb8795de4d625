package stackside.cli;

import java.nio.file.Path;
import java.util.List;
import stackside.publish.LocalDisk;

/** A command that writes, as it runs in a {@link SmallOffice}, and what it writes into. */
enum Writing {
  DRAFT("target/draft", "draft"),
  APPROVE("content", "approve", "--role", "lead-endoscopist", "--initials", "AB"),
  ISSUE("site", "issue"),
  WITHDRAW(
      "site",
      "withdraw",
      "asset:EQ-1",
      "--reason",
      "Smoke",
      "--role",
      "lead-nurse",
      "--initials",
      "AB");

  private final String target;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of
  private final List<String> arguments;

  Writing(String target, String... arguments) {
    this.target = target;
    this.arguments = List.of(arguments);
  }

  String target() {
    return target;
  }

  List<String> arguments() {
    return arguments;
  }

  SmallOffice.Ended run(Path folder) {
    return SmallOffice.run(folder, new LocalDisk(), arguments.toArray(String[]::new));
  }
}
