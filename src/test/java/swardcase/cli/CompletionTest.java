package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.AutoComplete;
import picocli.CommandLine;

/** The completion script, made as the build makes it. */
class CompletionTest {

  private static final Path BASH = Path.of("/bin/bash");
  private static final Path ZSH = Path.of("/bin/zsh");

  @TempDir private Path folder;

  private Path script() {
    Path script = folder.resolve("completion.bash");
    AutoComplete.main(
        "--factory=" + Commands.class.getName(),
        "--name=swardcase",
        "--completionScript=" + script,
        Swardcase.class.getName());
    return script;
  }

  @Test
  void completion_ofTheProgram_knowsEveryCommandAndOption() throws IOException {
    String text = Files.readString(script());

    for (CommandLine command : Main.commandLine().getSubcommands().values()) {
      assertThat(text).contains("function _picocli_swardcase_" + command.getCommandName() + "()");
      command
          .getCommandSpec()
          .options()
          .forEach(option -> assertThat(text).contains("'" + option.longestName() + "'"));
    }
  }

  @Test
  void completion_readByBash_offersTheCommandsThatFit() throws Exception {
    assumeTrue(Files.isExecutable(BASH), "there is no bash here");
    String ask =
        "source '%s' && COMP_WORDS=(swardcase com) COMP_CWORD=1 && _complete_swardcase swardcase com"
            + " swardcase && echo \"${COMPREPLY[@]}\"";

    Process bash =
        new ProcessBuilder(BASH.toString(), "-c", ask.formatted(script()))
            .redirectErrorStream(true)
            .start();

    assertThat(new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
        .isEqualTo("compare\n");
    assertThat(bash.waitFor()).isZero();
  }

  @Test
  void completion_ofTheProgram_asksZshForItsBashCompletion() throws IOException {
    assertThat(Files.readString(script()))
        .containsSubsequence("ZSH_VERSION", "bashcompinit", "complete -F _complete_swardcase");
  }

  @Test
  void completion_readByZsh_isSoundAndRegistered() throws Exception {
    assumeTrue(Files.isExecutable(ZSH), "there is no zsh here");
    Path script = script();

    assertThat(zsh("-n", script.toString())).isEmpty();
    assertThat(zsh("-fc", "source '" + script + "'; print -r -- ${_comps[swardcase]}"))
        .contains("_bash_complete", "-F _complete_swardcase");
  }

  private String zsh(String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of(ZSH.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("ZDOTDIR", folder.toString());
    Process zsh = builder.start();
    zsh.getOutputStream().close();
    String printed = new String(zsh.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(zsh.waitFor()).isZero();
    return printed;
  }
}
