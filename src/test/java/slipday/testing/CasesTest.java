package slipday.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CasesTest {
  @TempDir Path area;

  @Test
  void casesComeByName() throws IOException {
    put("second", "b");
    put("first", "a");
    Files.writeString(area.resolve("note.txt"), "no case");
    var cases = Cases.in(area, List.of("input.season"));
    assertThat(cases).extracting(Cases.Case::toString).containsExactly("first", "second");
    assertThat(cases.get(0).read("input.season")).isEqualTo("a");
  }

  @Test
  void aCaseWithoutItsInputFails() throws IOException {
    Files.createDirectory(area.resolve("bare"));
    assertThatThrownBy(() -> Cases.in(area, List.of("input.season"))).hasMessageContaining("bare");
  }

  @Test
  void anAreaWithoutCasesFails() {
    assertThatThrownBy(() -> Cases.in(area, List.of())).hasMessageContaining("no case");
    assertThatThrownBy(() -> Cases.in(area.resolve("gone"), List.of()))
        .hasMessageContaining("no case");
  }

  private void put(String name, String input) throws IOException {
    Path folder = Files.createDirectory(area.resolve(name));
    Files.writeString(folder.resolve("input.season"), input);
  }
}
