package slipday.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.source.Source;

class FoldingTest {
  private final Source source = Source.of("a.season", "x\n".repeat(20));
  private final Source other = Source.of("b.season", "x\n".repeat(20));

  private static Finding at(Source source, int line, String message) {
    return Finding.error("some-rule", source.span(line * 2 - 2, line * 2 - 1), message);
  }

  @Test
  void aFewStandAsTheyAre() {
    List<Finding> few = List.of(at(source, 1, "A."), at(source, 2, "A."), at(source, 3, "A."));
    assertThat(Folding.fold(few)).isEqualTo(few);
  }

  @Test
  void moreBecomeOneThatNamesTheLines() {
    List<Finding> many = new ArrayList<>();
    for (int line = 2; line <= 6; line++) {
      many.add(at(source, line, "A."));
    }
    assertThat(Folding.fold(many))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.place().orElseThrow().span().line()).isEqualTo(2);
              assertThat(f.notes()).containsExactly("The same stands on 4 more lines: 3, 4, 5, 6.");
            });
  }

  @Test
  void aLongListOfLinesIsCut() {
    List<Finding> many = new ArrayList<>();
    for (int line = 1; line <= 20; line++) {
      many.add(at(source, line, "A."));
    }
    assertThat(Folding.fold(many).get(0).notes())
        .containsExactly("The same stands on 19 more lines: 2, 3, 4, 5, 6, 7, 8, 9 …");
  }

  @Test
  void whatDiffersIsNotFolded() {
    List<Finding> mixed = new ArrayList<>();
    for (int line = 1; line <= 3; line++) {
      mixed.add(at(source, line, "A."));
      mixed.add(at(source, line, "B."));
      mixed.add(at(other, line, "A."));
      mixed.add(at(source, line, "A.").allowedBecause("reason " + line));
      mixed.add(Finding.placeless("some-rule", Level.ERROR, "A."));
    }
    assertThat(Folding.fold(mixed)).isEqualTo(mixed);
  }

  @Test
  void theOthersKeepTheirOrder() {
    List<Finding> findings = new ArrayList<>();
    findings.add(at(source, 1, "First."));
    for (int line = 2; line <= 9; line++) {
      findings.add(at(source, line, "A."));
    }
    findings.add(at(source, 10, "Last."));
    assertThat(Folding.fold(findings))
        .extracting(Finding::message)
        .containsExactly("First.", "A.", "Last.");
  }
}
