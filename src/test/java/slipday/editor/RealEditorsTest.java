package slipday.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.outside.OutsideTools;
import slipday.outside.OutsideTools.Tool;
import slipday.testing.CommandOnPath;
import slipday.testing.Golden;

/** Clients made by others, set up as our pages say. */
class RealEditorsTest {
  private static final Path EXTENSION = Path.of("docs/editors/vscode");
  private static final Path MODULES = Path.of("target/outside/node_modules");

  @TempDir Path folder;

  /**
   * What an editor finds around it: the command, a plan with a slip, and the set-up of our page.
   *
   * @param kind of the page's block of code
   */
  private Map<String, String> surroundings(String page, String kind) throws IOException {
    String text = Golden.read(Path.of("docs/editors").resolve(page));
    String fence = "```" + kind + "\n";
    int from = text.indexOf(fence) + fence.length();
    assertThat(from).as(fence).isGreaterThan(fence.length());
    Path setup = folder.resolve("setup." + kind);
    Files.writeString(setup, text.substring(from, text.indexOf("```", from)));
    Path plan = folder.toRealPath().resolve("plan.season");
    Files.writeString(
        plan,
        EditorServerTest.PLAN
            .replace("include \"record\"\n\n", "")
            .replace("is a           muskmelon", "is a           muskmellon"));
    return Map.of(
        "PATH", CommandOnPath.in(folder.resolve("bin")),
        "SLIPDAY_SETUP", setup.toString(),
        "SLIPDAY_PLAN", plan.toString(),
        "HOME", folder.toString());
  }

  @Test
  void emacsShowsMendsAndRenames() throws IOException {
    // Without a script to end with, what is tried ends with a folder to look in.
    OutsideTools.program("emacs", "--batch", "--eval", "(require 'eglot)", "--directory");
    Tool eglot =
        new Tool(
            List.of("emacs", "--batch", "--no-init-file", "--load"),
            surroundings("emacs.md", "elisp"));
    Path script = Path.of("src/test/resources/editors/emacs.el").toAbsolutePath();
    List<String> said = eglot.run(script.toString()).lines().toList();
    assertThat(said)
        .containsSubsequence(
            "mode season-mode",
            "told in line 15",
            "mend Write `muskmelon`",
            "line   is a           muskmelon",
            "hover Cucumis melo",
            "declared in line 11",
            "renamed   in             sunny",
            "laid out   is a           muskmelon",
            "left");
  }

  @Test
  void neovimShowsMendsAndRenames() throws IOException {
    OutsideTools.program("nvim", "--headless", "-u", "NONE", "-c", "qall!", "-c");
    Tool neovim =
        new Tool(
            List.of("nvim", "--headless", "-u", "NONE", "-n", "-c"),
            surroundings("neovim.md", "lua"));
    Path script = Path.of("src/test/resources/editors/neovim.lua").toAbsolutePath();
    List<String> said = neovim.run("luafile " + script).lines().filter(l -> !l.isBlank()).toList();
    assertThat(said)
        .containsSubsequence(
            "filetype season",
            "told unknown-name 15 There is no crop `muskmellon`.",
            "mend Write `muskmelon`",
            "line   is a           muskmelon",
            "mended true",
            "hover Cucumis melo",
            "declared in line 11",
            "offered long-south",
            "renamed   in             sunny",
            "laid out   is a           muskmelon");
  }

  /** The extension's tests, by Node's own runner, with the modules its package names. */
  @Test
  void theExtensionTalksToTheServerAndColours() throws IOException {
    Path modules = modules("vscode-languageclient");
    Tool node =
        new Tool(
            List.of("node", "--test"),
            Map.of(
                "SLIPDAY_COMMAND", commandIn(folder.resolve("bin")),
                "NODE_PATH", modules.toString()));
    String told = node.run(EXTENSION.resolve("test/extension.test.js").toString());
    assertThat(told).contains("# pass 3").contains("# fail 0");
  }

  private static String commandIn(Path bin) throws IOException {
    CommandOnPath.in(bin);
    return bin.resolve("slipday").toString();
  }

  @Test
  void theExtensionIsPackedWithAllItNeeds() throws IOException {
    Path modules = modules("@vscode/vsce");
    Path copy = folder.resolve("extension");
    Tool shell = new Tool(List.of("bash", "-c"), Map.of());
    shell.run(
        "cp -r \"$0\" \"$1\" && cp -r \"$2\" \"$1/node_modules\" && cd \"$1\""
            + " && node \"$2/@vscode/vsce/vsce\" package --allow-missing-repository"
            + " --skip-license --out packed.vsix",
        EXTENSION.toAbsolutePath().toString(),
        copy.toString(),
        modules.toString());
    String files = shell.run("python3 -m zipfile -l \"$0\"", copy.resolve("packed.vsix") + "");
    assertThat(files)
        .contains("extension/extension.js")
        .contains("extension/syntaxes/season.tmLanguage.json")
        .contains("extension/node_modules/vscode-languageclient/")
        .doesNotContain("extension.test.js")
        .doesNotContain("vscode-textmate");
  }

  private static Path modules(String needed) {
    Path there = MODULES.resolve(needed);
    Optional<Path> found =
        Optional.of(MODULES.toAbsolutePath()).filter(m -> Files.isDirectory(there));
    return OutsideTools.requireOrSkip(found, "node module " + needed);
  }
}
