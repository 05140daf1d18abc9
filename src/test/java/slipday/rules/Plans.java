package slipday.rules;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.finding.Finding;
import slipday.finding.Label;

/** Runs plans that are nowhere on disk, beside a weather record. */
final class Plans {
  private static final Path FOLDER = Path.of("target/no-such-garden").toAbsolutePath().normalize();
  private static final String WEATHER = InventedWeather.csv();

  private Plans() {}

  /** Checks a plan called {@code plan.season}; {@code weather.csv} lies beside it. */
  static Checked check(String plan) {
    return check(plan, WEATHER);
  }

  static Checked check(String plan, String weather) {
    Path path = FOLDER.resolve("plan.season");
    FileTexts texts =
        FileTexts.withOverlays(Map.of(path, plan, FOLDER.resolve("weather.csv"), weather));
    return new Pipeline(texts, false, LocalDate.of(2035, 12, 31)).check(path, "plan.season");
  }

  /** Checks a file that is not there. */
  static Checked checkNothing(String name) {
    return new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2035, 12, 31))
        .check(FOLDER.resolve(name), name);
  }

  static List<Finding> of(Checked checked, String rule) {
    return checked.findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** All that a finding says, a line each. */
  static String shown(Finding finding) {
    StringBuilder text = new StringBuilder();
    text.append(finding.level().word()).append('[').append(finding.rule()).append("] ");
    text.append(finding.message()).append('\n');
    finding.place().ifPresent(p -> text.append("  at ").append(shown(p)));
    finding.others().forEach(o -> text.append("  also ").append(shown(o)));
    finding.notes().forEach(n -> text.append("  note: ").append(n).append('\n'));
    if (!finding.help().isEmpty()) {
      text.append("  help: ").append(finding.help()).append('\n');
    }
    text.append("  about: ").append(finding.subject()).append('\n');
    finding.allowed().ifPresent(a -> text.append("  allowed: ").append(a).append('\n'));
    return text.toString();
  }

  private static String shown(Label label) {
    String line = label.span().text().strip().replaceAll("\\s+", " ");
    return label.span().label()
        + " `"
        + line
        + "`"
        + (label.text().isEmpty() ? "" : ": " + label.text())
        + "\n";
  }
}
