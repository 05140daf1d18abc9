package slipday.output.report;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.garden.Garden;

/** Small gardens for tests. */
final class Gardens {
  private Gardens() {}

  /** One bed with plantings of lines called "Line number 0", each with so many plants. */
  static Garden of(String size, String... plants) {
    StringBuilder plan =
        new StringBuilder(
            "season 2026\nsite hill\n  place 44.21 N, 72.58 W\n  time zone America/New_York\n"
                + "  last frost 18 May, 1 in 10 after 30 May\n"
                + "  first frost 27 September, 1 in 10 before 14 September\n"
                + "bed strip\n  size "
                + size
                + "\n  corner 0 m east, 0 m north\n");
    for (int i = 0; i < plants.length; i++) {
      plan.append(
          "line l" + i + " \"Line number (" + i + ")\"\n  is a muskmelon\n  purpose to keep\n");
      plan.append("lot s" + i + "\n  of l" + i + "\n  seeds 200\n  harvested 2025\n");
      plan.append("grow s" + i + "\n  in strip\n  plants " + plants[i] + "\n  flowers open\n");
    }
    return checked(plan.toString()).garden().orElseThrow();
  }

  static Checked checked(String plan) {
    Pipeline pipeline = new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2026, 12, 31));
    ByteArrayInputStream in = new ByteArrayInputStream(plan.getBytes(StandardCharsets.UTF_8));
    return pipeline.check(in, "plan.season", Path.of("plan.season"));
  }
}
