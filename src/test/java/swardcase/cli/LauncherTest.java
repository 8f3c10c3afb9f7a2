package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

  @TempDir private Path folder;

  @Test
  void launcher_withoutItsProgramFile_saysWhichFileIsMissing() throws Exception {
    Path launcher = launcher();

    Process process = new ProcessBuilder("sh", launcher.toString(), "--help").start();
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err)
        .isEqualTo(
            "Swardcase cannot find its program file "
                + folder.toRealPath().resolve("swardcase.jar")
                + ".\n");
  }

  @Test
  void launcher_withoutJava_saysSo() throws Exception {
    ProcessBuilder builder = new ProcessBuilder("sh", launcher().toString(), "--help");
    builder.environment().put("JAVA_HOME", folder.resolve("none").toString());

    Process process = builder.start();
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err).isEqualTo("Swardcase needs Java 17 or newer: none was found.\n");
  }

  /** Java in its place tells whether there is an input: a closed one cannot be read to its end. */
  @Test
  void launcher_withItsInputClosed_givesTheProgramAnEmptyOne() throws Exception {
    Path launcher = launcher();
    Files.writeString(folder.resolve("swardcase.jar"), "");
    Path java = Files.createDirectories(folder.resolve("java/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\ncat && echo empty\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
    ProcessBuilder builder = new ProcessBuilder("sh", "-c", "sh '" + launcher + "' start x <&-");
    builder.environment().put("JAVA_HOME", folder.resolve("java").toString());
    builder.environment().remove("HOME");
    builder.environment().remove("XDG_CACHE_HOME");

    Process process = builder.start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(out).isEqualTo("empty\n");
    assertThat(process.waitFor()).isZero();
  }

  @Test
  void launcher_withTheArchiveOfTheBuild_startsJavaWithIt() throws Exception {
    Path jar = Files.createFile(folder.resolve("swardcase.jar"));
    Path launcher = launcher();

    assertThat(javaArguments(launcher)).contains("-jar", jar.toRealPath().toString(), "--help");
    assertThat(javaArguments(launcher)).noneMatch(argument -> argument.contains("Archive"));

    Path archive = Files.createFile(launcher.resolveSibling("swardcase.jsa"));

    assertThat(javaArguments(launcher))
        .contains("-XX:SharedArchiveFile=" + archive.toRealPath(), "--help");
  }

  /** What the launcher gives to a Java that only says what it was given. */
  private List<String> javaArguments(Path launcher) throws IOException {
    Path java = Files.createDirectories(folder.resolve("java/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\nprintf '%s\\n' \"$@\"\n");
    Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwx------"));
    ProcessBuilder builder = new ProcessBuilder("sh", launcher.toString(), "--help");
    builder.environment().put("JAVA_HOME", folder.resolve("java").toString());
    try (BufferedReader said = builder.start().inputReader()) {
      return said.lines().toList();
    }
  }

  private Path launcher() throws IOException {
    return Files.copy(
        Path.of("src/main/launcher/swardcase"),
        Files.createDirectories(folder.resolve("bin")).resolve("swardcase"),
        StandardCopyOption.REPLACE_EXISTING);
  }
}
