package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.source.Source;

/** How a text of findings ends. */
class FindingsTextTest {
  private final Source source = Source.of("plan.season", "one\ntwo\nthree\nfour\nfive and more\n");

  private Finding at(int line, Level level) {
    int start = source.lineStart(line);
    return Finding.at("some-rule", level, source.span(start, start + 3), "It is so.");
  }

  private List<Finding> notes(int many) {
    List<Finding> notes = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      notes.add(at(1 + i % 4, Level.NOTE));
    }
    return notes;
  }

  @Test
  void errorsAmongOthersAreToldAgainByPlace() {
    List<Finding> all = notes(3);
    all.add(at(2, Level.ERROR));
    assertThat(FindingsText.errorsAmong(all))
        .isEqualTo("Mend the error first:\n  plan.season:2:1 some-rule\n\n");
    all.add(at(2, Level.ERROR));
    all.add(Finding.placeless("gone", Level.ERROR, "It is gone."));
    assertThat(FindingsText.errorsAmong(all))
        .isEqualTo("Mend the errors first:\n  plan.season:2:1 some-rule\n  gone\n\n");
  }

  @Test
  void ofVeryManyTheFirstAreTold() {
    List<Finding> all = notes(1);
    for (int i = 0; i < 12; i++) {
      int start = source.lineStart(3) + i;
      all.add(Finding.error("rule", source.span(start, start), "It is so."));
    }
    assertThat(FindingsText.errorsAmong(all)).endsWith("plan.season:4:4 rule\n  and 2 more\n\n");
  }

  @Test
  void nothingIsSaidWhereNoneIsMissed() {
    List<Finding> few = notes(2);
    few.add(at(2, Level.ERROR));
    assertThat(FindingsText.errorsAmong(few)).isEmpty();
    assertThat(FindingsText.errorsAmong(notes(9))).isEmpty();
    List<Finding> errorsAlone = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      errorsAlone.add(at(3, Level.ERROR));
    }
    assertThat(FindingsText.errorsAmong(errorsAlone)).isEmpty();
    List<Finding> allowed = notes(4);
    allowed.add(at(2, Level.ERROR).allowedBecause("it was so last year"));
    assertThat(FindingsText.errorsAmong(allowed)).isEmpty();
  }
}
