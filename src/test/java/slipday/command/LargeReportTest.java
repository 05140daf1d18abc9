package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.outside.Browser;
import slipday.testing.LargeGarden;

/** The page of a garden far larger than most. */
class LargeReportTest {
  /** Bytes of page that a planting may take, all told. */
  private static final int A_PLANTING = 16_000;

  @TempDir Path folder;

  private String page(int plantings) throws IOException {
    Files.writeString(folder.resolve("plan.season"), LargeGarden.plan(plantings));
    Run run = Run.in(folder, "report", "plan.season", "--date", "2026-07-08");
    assertThat(run.exit()).as(run.err()).isNotEqualTo(Exit.UNUSABLE);
    return run.out();
  }

  private static int size(String page) {
    return page.getBytes(StandardCharsets.UTF_8).length;
  }

  /** Pollen reaches a number of plantings that grows with the square; the page must not. */
  @Test
  void thePageGrowsWithTheGardenAndNotWithItsSquare() throws IOException {
    int small = size(page(50));
    int large = size(page(200));
    assertThat(large).isLessThan((int) (small * 4.1));
    assertThat(large).isBetween(200 * 2_000, 200 * A_PLANTING);
  }

  @Test
  void fiveHundredPlantingsAreAllThereAndAnswer() throws IOException {
    String written = page(500);
    assertThat(size(written)).isLessThan(500 * A_PLANTING);
    try (Browser browser = Browser.start()) {
      browser.resize(1280, 900);
      browser.open(Files.writeString(folder.resolve("page.html"), written));
      JsonNode rows = browser.run("return document.querySelectorAll('#season .row').length");
      assertThat(rows.asInt()).isEqualTo(500);
      JsonNode laidOut =
          browser.run(
              """
              const seen = e => e.checkVisibility({contentVisibilityAuto: true});
              return Array.from(document.querySelectorAll('.finding')).filter(seen).length
              """);
      assertThat(laidOut.asInt()).as("findings laid out before they are in sight").isZero();
      browser.run("document.querySelectorAll('#season .row')[499].click()");
      JsonNode told = browser.run("return document.querySelector('#why-body').innerText");
      assertThat(told.asText()).contains("lot-", "first male flowers", "pollen of others");
      assertThat(browser.complaints()).isEmpty();
    }
  }
}
