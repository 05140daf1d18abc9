package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.outside.OutsideTools;
import slipday.outside.OutsideTools.Tool;

/** The shells themselves complete a half-typed line by our scripts; groff reads the manual page. */
class ShellScriptsTest {
  /** Types a line and a tab into an interactive zsh, where slipday says what it was given. */
  private static final String ZSH =
      """
      zmodload zsh/zpty
      zpty shell zsh -f -i
      zpty -w shell "PS1=''; stty columns 200; autoload -Uz compinit; compinit -u -D"
      zpty -w shell "source $1; slipday() { print -r -- GI''VEN:\\$*: }; print -r -- REA'DY'"
      heard=''
      listen() {
        local tries=0
        until [[ $heard == *$1* ]] || (( tries++ > 200 )); do
          zpty -r -t shell line && heard+=$line || sleep 0.05
        done
      }
      listen READY
      zpty -w -n shell "$2"$'\\t'
      sleep 0.5
      zpty -w -n shell $'\\n'
      listen GIVEN:
      print -r -- "${${heard##*GIVEN:}%%:*}"
      """;

  @TempDir Path folder;

  private Path script(String shell) throws IOException {
    Run run = Run.in(Path.of(""), "completion", shell);
    assertThat(run.exit()).isZero();
    return Files.writeString(folder.resolve("script." + shell), run.out());
  }

  @ParameterizedTest
  @CsvSource({
    "slipday bloo, bloom",
    "slipday check --fail-on '', error note warning",
    "slipday check --allo, --allowed",
    "slipday completion '', bash fish zsh"
  })
  void fishCompletes(String typed, String expected) throws IOException {
    Tool fish = OutsideTools.program("fish", "--no-config", "-c");
    String told =
        fish.run("source $argv[1]; complete -C $argv[2]", script("fish").toString(), typed);
    List<String> words = told.lines().map(l -> l.replaceFirst("\t.*", "")).sorted().toList();
    assertThat(words).containsExactly(expected.split(" "));
  }

  @Test
  void fishOffersPlansWhereOneIsWanted() throws IOException {
    Tool fish = OutsideTools.program("fish", "--no-config", "-c");
    Files.writeString(folder.resolve("plan.season"), "");
    String script = "source $argv[1]; cd $argv[2]; complete -C $argv[3]";
    String where = folder.toString();
    assertThat(fish.run(script, script("fish").toString(), where, "slipday check pl").lines())
        .containsExactly("plan.season");
    assertThat(fish.run(script, script("fish").toString(), where, "slipday completion pl"))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "slipday sched, schedule",
    "slipday check --fail-on=er, check --fail-on=error",
    "slipday check --allo, check --allowed",
    "slipday completion fi, completion fish"
  })
  void zshCompletes(String typed, String expected) throws IOException {
    Tool zsh = OutsideTools.program("zsh", "-f", "-c");
    String told = zsh.run(ZSH, "zsh", script("zsh").toString(), typed);
    assertThat(told.strip()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "slipday bloo, bloom",
    "slipday check --fail-on '', error note warning",
    "slipday check --allo, --allowed",
    "slipday completion '', bash fish zsh"
  })
  void bashCompletes(String typed, String expected) throws IOException {
    Tool bash = OutsideTools.program("bash", "--norc", "-c");
    String script =
        "source $0; compopt() { :; }; eval \"COMP_WORDS=($1)\";"
            + " COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _complete_slipday;"
            + " printf '%s\\n' \"${COMPREPLY[@]}\" | sort";
    String told = bash.run(script, script("bash").toString(), typed);
    assertThat(told.lines()).containsExactly(expected.split(" "));
  }

  @Test
  void anUnknownShellIsToldWhichThereAre() {
    Run run = Run.in(Path.of(""), "completion", "tcsh");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("`tcsh`").contains("bash, zsh, fish");
  }

  @Test
  void groffReadsTheManualPageWithoutAWarning() throws IOException {
    Path page = Files.writeString(folder.resolve("slipday.1"), Run.in(Path.of(""), "manual").out());
    Tool shell = OutsideTools.program("bash", "-c");
    OutsideTools.program("bash", "-c").run("command -v groff");
    String warnings = shell.run("groff -man -ww -z -Tutf8 $0", page.toString());
    assertThat(warnings).isEmpty();
    String shown = shell.run("groff -man -Tascii -P-cbou $0", page.toString());
    assertThat(shown).contains("slipday check PLAN").contains("--fail-on LEVEL");
  }
}
