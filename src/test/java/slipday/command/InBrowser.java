package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import slipday.outside.Browser;
import slipday.outside.OutsideTools;

/** What tests of the report's page in a real browser have in common. */
abstract class InBrowser {
  /** When the recorded year is over. */
  private static final Map<String, String> AFTER = Map.of("SOURCE_DATE_EPOCH", "1830000000");

  @TempDir static Path folder;
  static Browser browser;

  @BeforeAll
  static void start() {
    browser = Browser.start();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void light() {
    browser.resize(1280, 900);
    browser.dark(false);
    browser.scripts(true);
  }

  static Path written(String plan, String name, String... options) throws IOException {
    String[] args =
        Stream.concat(Stream.of("report", plan), Stream.of(options)).toArray(String[]::new);
    Run run = Run.in(Path.of(""), new byte[0], AFTER, false, args);
    assertThat(run.exit()).as(run.err()).isNotEqualTo(Exit.UNUSABLE);
    return Files.writeString(folder.resolve(name), run.out());
  }

  static void nothingIsAmiss() {
    assertThat(browser.complaints()).isEmpty();
    assertThat(browser.requests()).isNotEmpty().allMatch(url -> url.matches("(file|data):.*"));
  }

  static String text(String selector) {
    return browser.run("return document.querySelector(arguments[0]).innerText", selector).asText();
  }

  /** Taps so far to the right of an element's middle. */
  static void tap(String selector, double aside) {
    JsonNode at =
        browser.run(
            """
            const sign = document.querySelector(arguments[0]);
            sign.scrollIntoView({block: 'center', behavior: 'instant'});
            const box = sign.getBoundingClientRect();
            return [box.left + box.width / 2, box.top + box.height / 2]
            """,
            selector);
    browser.tap(at.get(0).asDouble() + aside, at.get(1).asDouble());
  }

  /** What axe-core finds that keeps people from using the page. */
  static List<String> barriers() {
    browser.run(OutsideTools.axe());
    return strings(
        browser.runAsync(
            """
            const done = arguments[arguments.length - 1];
            axe.run(document, {resultTypes: ['violations']}).then(r => done(r.violations
              .filter(v => v.impact === 'serious' || v.impact === 'critical')
              .map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + ' ' + n.failureSummary).join(' | '))))
            """));
  }

  static List<String> strings(JsonNode array) {
    List<String> strings = new ArrayList<>();
    array.forEach(n -> strings.add(n.asText()));
    return strings;
  }
}
