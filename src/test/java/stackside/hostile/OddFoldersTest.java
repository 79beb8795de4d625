package stackside.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stackside.cli.WholeChain;

/** Content folders whose entries are not what their names promise, and invalid names. */
@Tag("thorough")
final class OddFoldersTest {
  private static final Duration LONGEST = Duration.ofSeconds(30);

  /** One oddity, created by a shell in a folder that holds a small valid unit. */
  enum Oddity {
    FILES_THAT_LINK_IN_A_CIRCLE("cd machines && ln -s b.yaml a.yaml && ln -s a.yaml b.yaml"),
    FOLDER_THAT_LINKS_TO_ITSELF("rm -r drills && ln -s . drills"),
    FOLDER_THAT_LINKS_TO_ITS_PARENT("rm -r drills && ln -s .. drills"),
    LINKS_DEEP_INTO_A_CIRCLE("ln -s drills drills/drills.yaml && ln -s ../drills machines/m.yaml"),
    LINK_TO_ENDLESS_ZEROS("ln -s /dev/zero machines/zero.yaml"),
    LINK_TO_A_TERMINAL("ln -s /dev/tty handbook/tty.md"),
    LINK_TO_PASSWORDS("ln -s /etc/passwd assets.csv -f"),
    LINK_TO_NOTHING("rm unit.yaml && ln -s nowhere unit.yaml"),
    UNIT_IS_A_FOLDER("rm unit.yaml && mkdir unit.yaml"),
    SHEET_IS_A_FOLDER("rm -f assets.csv && mkdir assets.csv"),
    MACHINE_IS_A_FOLDER("mkdir machines/x.yaml && touch machines/x.yaml/y.yaml"),
    FOLDER_IS_A_FILE("rm -r drills && touch drills"),
    LEDGER_IS_A_FOLDER("rm -f approvals.csv && mkdir approvals.csv"),
    LEDGER_LINKS_TO_ITSELF("rm -f approvals.csv && ln -s approvals.csv approvals.csv"),
    COPIES_ARE_A_FILE("touch approved"),
    COPY_IS_A_FOLDER("mkdir -p approved/x.json && ln -s . approved/y.json"),
    PIPE_THAT_NOBODY_WRITES_TO("mkfifo machines/pipe.yaml && mkfifo instruments2.yaml"),
    NOTHING_AT_ALL("rm -r ./*"),
    FOLDERS_IN_FOLDERS("mkdir -p machines/$(printf 'a/%.0s' $(seq 200))"),
    MANY_FILES("cd handbook && for i in $(seq 1500); do echo '# P' > p-$i.md; done"),
    NAME_WITH_LINE_END("echo 'id: a' > $'machines/a\\nb.yaml'; touch $'x\\ny'"),
    NAME_WITH_ESCAPE("echo 'id: a' > $'machines/\\e[2Jb.yaml'; touch $'\\e]0;x\\a.yaml'"),
    NAME_WITH_BELL_AND_DELETE("touch $'drills/\\a\\x7f.yaml'"),
    NAME_TURNED_ROUND("touch $'drills/\\u202elmay.yaml' $'\\u200b.yaml'"),
    NAME_THAT_IS_NOT_UTF_8("touch $'machines/\\xff\\xfe.yaml' $'rooms/caf\\xe9.yaml' $'\\x80'"),
    NAME_OF_DOTS("touch ./...yaml machines/..yaml machines/.yaml machines/...yaml"),
    NAME_OF_BLANKS("touch ' ' 'machines/ .yaml' 'machines/a b.yaml'"),
    NAME_VERY_LONG("touch machines/$(printf 'a%.0s' $(seq 250)).yaml"),
    NAME_IN_CAPITALS("cp unit.yaml UNIT.YAML; touch machines/A.YAML machines/a.Yaml"),
    NAME_FOR_A_SHELL("touch 'machines/$(reboot).yaml' 'machines/;rm.yaml' 'machines/-rf.yaml'"),
    NAME_FOR_A_PAGE("touch 'handbook/<script>alert(1)<'$'\\x7f''script>.md' 'handbook/\"x.md'"),
    NAME_LIKE_ANOTHER(
        "cp machines/*.yaml machines/arrowgrass.yml; touch machines/arrowgrass.yaml~ .#x");

    private final String shell;

    Oddity(String shell) {
      this.shell = shell;
    }
  }

  @ParameterizedTest
  @EnumSource
  void bringsProblemsOnly(Oddity oddity, @TempDir Path folder) throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
    copy(Path.of("src/test/resources/units/cholla"), folder);
    Process bash =
        new ProcessBuilder("/bin/bash", "-c", oddity.shell).directory(folder.toFile()).start();
    String told = new String(bash.getErrorStream().readAllBytes(), UTF_8);
    assertThat(bash.waitFor()).as(told).isZero();
    List<String> wrong = new ArrayList<>();
    assertTimeoutPreemptively(
        LONGEST,
        () -> {
          WholeChain chain = WholeChain.of(folder);
          wrong.addAll(Words.wrong(chain, chain.text(), chain.json()));
          if (chain.isReadable()) {
            chain.draft();
          }
        });
    assertThat(wrong).isEmpty();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (var walk = Files.walk(from)) {
      for (Path path : walk.toList()) {
        Path there = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(there);
        } else {
          Files.copy(path, there);
        }
      }
    }
  }
}
