package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.output.Hostile;

/** The plots of candidates and generations as a real browser shows them. */
class PlotsInBrowserTest extends InBrowser {
  private static final String MEASURED =
      """

      goal one
        raise sweetness to 13 brix, matters 5
        keep fruit weight at 1 kg to 2 kg, matters 2
        refuse cracked
        parents 2 or more

      2026-07-08 selfed one-f3 plant 1, tag 1A
      2026-07-08 selfed one-f3 plant 2, tag 2A
      2026-07-08 selfed one-f3 plant 3, tag 3A
      2026-09-01 picked 1A, 1.5 kg, 12 brix
      2026-09-01 picked 2A, 1.2 kg, 11 brix
      2026-09-01 picked 3A, 1.1 kg, 13 brix
      2026-09-01 fault 2A, cracked
      """;

  private static Path page;
  private static Path hostile;

  @BeforeAll
  static void writeThePages() throws IOException {
    page = written("plans/tern-hollow/recorded.season", "page.html");
    Path plan = folder.resolve("hostile.season");
    Files.writeString(plan, Hostile.PLAN + MEASURED);
    hostile = written(plan.toString(), "hostile.html");
  }

  @Test
  void tappingBesideAMarkTellsOfThePlantAndLightsAllItsMarks() {
    browser.resize(390, 844);
    browser.open(page);
    String plant = "#candidates .plot .mark[data-thing='cp0-0']";
    tap(plant + " .sign", 0);
    assertThat(text("#why"))
        .contains("tern-amber-f3 plant 10", "10A", "For:", "2nd for sweetness", "12.2 brix");
    assertThat(browser.run("return document.querySelectorAll('.plot .lit').length").asInt())
        .as("in every pair of the four traits")
        .isEqualTo(6);
    // The nearest is meant where a thumb hits none.
    browser.key("Escape");
    JsonNode apart =
        browser.run(
            """
            const plot = document.querySelector('#candidates .plot');
            const at = m => { const b = m.querySelector('.sign').getBoundingClientRect();
              return [b.left + b.width / 2, b.top + b.height / 2]; };
            const far = Array.from(plot.querySelectorAll('.mark')).map(m => ({m, at: at(m)}));
            const best = far.map(f => ({f, gap: Math.min(...far.filter(o => o !== f)
              .map(o => Math.hypot(o.at[0] - f.at[0], o.at[1] - f.at[1])))}))
              .sort((a, b) => b.gap - a.gap)[0];
            best.f.m.classList.add('alone');
            return [best.gap, best.f.m.querySelector('title').textContent]
            """);
    assertThat(apart.get(0).asDouble()).isGreaterThan(15);
    tap(".mark.alone .sign", 7.3);
    assertThat(text("#why-title")).isNotBlank();
    assertThat(apart.get(1).asText()).startsWith(text("#why-title") + ",");
    nothingIsAmiss();
  }

  @Test
  void arrowsGoFromMarkToMarkAndEnterTellsWhy() {
    browser.open(page);
    browser.run("document.querySelector('#candidates .plot .mark[tabindex=\"0\"]').focus()");
    browser.key("ArrowRight");
    browser.key("ArrowRight");
    String at = browser.run("return document.activeElement.getAttribute('aria-label')").asText();
    assertThat(
            browser
                .run(
                    "return document.querySelectorAll('#candidates .plots"
                        + " .plot')[0].querySelectorAll('[tabindex=\"0\"]').length")
                .asInt())
        .as("one stop of Tab for each plot")
        .isEqualTo(1);
    browser.key("Enter");
    assertThat(text("#why-title")).isNotBlank();
    assertThat(at).startsWith(text("#why-title"));
    browser.key("Escape");
    assertThat(browser.run("return document.activeElement.getAttribute('aria-label')").asText())
        .isEqualTo(at);
    nothingIsAmiss();
  }

  @Test
  void theTableTellsWhatTheDrawingsShow() {
    browser.open(page);
    browser.run("document.querySelector('#candidates .figures .go').click()");
    assertThat(text("#why-title")).isEqualTo("tern-amber-f3 plant 10");
    assertThat(text("#candidates .figures tbody tr")).contains("10A 10C 10F", "13.4 › 12.2");
    int rows = browser.run("return document.querySelector('.figures tbody').rows.length").asInt();
    assertThat(rows).isEqualTo(18);
    nothingIsAmiss();
  }

  @Test
  void aGenerationTellsOfItsPlants() {
    browser.open(page);
    tap("#generations .plot .mark .hit", 0);
    assertThat(text("#why-title")).isEqualTo("F2");
    assertThat(text("#why")).contains("in 6 plants, 17 fruits", "12.4 brix, tern-amber-f2 plant 3");
    assertThat(text("#why .under")).contains("in the plan");
    browser.run("document.querySelector('#why details').open = true");
    browser.runAsync(
        """
        const done = arguments[arguments.length - 1];
        const look = () => document.querySelector('#why li li a') ? done() : setTimeout(look, 20);
        look();
        """);
    assertThat(text("#why")).contains("-2026.season:");
    assertThat(browser.run("return document.querySelectorAll('.line.cited').length").asInt())
        .as("lines of the record that it rests on")
        .isGreaterThan(5);
    assertThat(text("#generations")).contains("told by F2 and F3 side by side");
    nothingIsAmiss();
  }

  @ParameterizedTest
  @CsvSource({"false, 1280", "true, 1280", "false, 360", "true, 360"})
  void axeFindsNothingSerious(boolean dark, int width) {
    browser.resize(width, 800);
    browser.dark(dark);
    browser.open(page);
    browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertThat(barriers()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"page", "hostile"})
  void nothingOverflowsATelephone(String which) {
    browser.resize(360, 740);
    browser.open(which.equals("page") ? page : hostile);
    browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertThat(browser.run("return document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(360);
    JsonNode wide =
        browser.run(
            """
            return Array.from(document.querySelectorAll('#candidates *, #generations *'))
              .filter(e => e.getBoundingClientRect().right > 361 && e.checkVisibility())
              .filter(e => !e.classList.contains('unseen'))
              .map(e => e.outerHTML.slice(0, 120))
            """);
    assertThat(strings(wide)).isEmpty();
  }

  /** What is only of use to a finger or a key goes; what the drawings mean stays. */
  @Test
  void onPaperTheDrawingsKeepTheirSignsAndNotes() {
    browser.open(page);
    browser.onPaper();
    JsonNode hidden =
        browser.run(
            """
            const all = '#candidates, #generations';
            return Array.from(document.querySelectorAll(all)).flatMap(s => Array.from(
              s.querySelectorAll('.legend *, .plots > figure > *, .plots svg .mark > *, .hint:not(.how)')))
              .filter(e => e.closest('details') === null && e.tagName !== 'title')
              .filter(e => getComputedStyle(e).display === 'none')
              .map(e => e.outerHTML.slice(0, 120))
            """);
    assertThat(strings(hidden)).isEmpty();
    assertThat(
            browser
                .run("return document.querySelectorAll('#generations .plot .dot').length")
                .asInt())
        .isGreaterThan(20);
    assertThat(
            browser.run("return getComputedStyle(document.querySelector('.how')).display").asText())
        .isEqualTo("none");
  }

  @Test
  void theLegendHasEverySign() {
    browser.open(page);
    JsonNode signs =
        browser.run(
            """
            return Array.from(document.querySelectorAll('#candidates .legend .mark'))
              .map(e => e.className + ': ' + e.innerText.trim() + ' ' + e.querySelector('.sign').getAttribute('d'))
            """);
    JsonNode drawn =
        browser.run(
            """
            return Array.from(new Set(Array.from(document.querySelectorAll('#candidates .plot .mark'))
              .map(e => e.getAttribute('class') + ' ' + e.querySelector('.sign').getAttribute('d'))))
            """);
    assertThat(strings(signs)).hasSize(4).contains("mark refused: refused M-4 -4 4 4M4 -4 -4 4");
    assertThat(strings(drawn))
        .isNotEmpty()
        .allMatch(
            d -> {
              int kind = d.indexOf(' ', "mark ".length());
              return strings(signs).stream()
                  .anyMatch(
                      s -> s.startsWith(d.substring(0, kind)) && s.endsWith(d.substring(kind)));
            });
  }

  @Test
  void aHostilePlanShowsItsTextAndRunsNothing() {
    browser.open(hostile);
    assertThat(text("#candidates h3")).contains("</script>" + Hostile.SCRIPT);
    browser.run(
        "document.querySelectorAll('#candidates [data-thing]').forEach(e => e.dispatchEvent(new"
            + " MouseEvent('click', {bubbles: true})))");
    assertThat(text("#why")).contains(Hostile.SCRIPT);
    assertThat(browser.run("return document.title").asText()).isNotEqualTo("run");
    assertThat(browser.run("return document.querySelectorAll('img, script').length").asInt())
        .as("the data and the script of ours")
        .isEqualTo(2);
    nothingIsAmiss();
  }
}
