package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.output.Hostile;
import slipday.outside.Browser;

/** The page as a real browser shows it. */
class ReportInBrowserTest extends InBrowser {
  private static final List<String> SECTIONS =
      List.of("season", "pollination", "fruit", "garden", "seed", "descent", "findings", "text");

  private static Path page;
  private static Path planned;
  private static Path muddle;
  private static Path hostile;

  @BeforeAll
  static void writeThePages() throws IOException {
    page = written("plans/tern-hollow/recorded.season", "page.html", "--date", "2026-07-20");
    planned = written("plans/tern-hollow/plan.season", "planned.html", "--date", "2026-07-08");
    muddle = written("plans/tern-hollow/muddle.season", "muddle.html", "--date", "2026-07-08");
    Path plan = folder.resolve("hostile.season");
    Files.writeString(plan, Hostile.PLAN);
    hostile = written(plan.toString(), "hostile.html", "--date", "2026-07-08");
  }

  @Test
  void everySectionIsThereAndNothingIsAskedOfTheNetwork() {
    browser.open(page);
    for (String section : SECTIONS) {
      JsonNode height =
          browser.run(
              "return document.getElementById(arguments[0]).getBoundingClientRect().height",
              section);
      assertThat(height.asDouble()).as(section).isGreaterThan(60);
    }
    nothingIsAmiss();
  }

  @Test
  void tappingABarTellsTheReasonsOfWhatLiesThere() {
    browser.open(planned);
    JsonNode at =
        browser.run(
            """
            const bar = document.querySelector('.row[data-thing] .flowers');
            bar.scrollIntoView({block: 'center'});
            const box = bar.getBoundingClientRect();
            return [box.left + box.width / 2, box.top + box.height / 2]
            """);
    browser.tap(at.get(0).asDouble(), at.get(1).asDouble());
    waitForReasons();
    String told = text("#why");
    assertThat(told).contains("first perfect flowers", "plan.season:");
    assertThat(
            browser.run("return document.querySelectorAll('#why details[open] li').length").asInt())
        .isGreaterThan(3);
    assertThat(browser.run("return document.querySelectorAll('.line.cited').length").asInt())
        .as("lines of the plan that it rests on")
        .isGreaterThan(0);
    nothingIsAmiss();
  }

  @Test
  void aLineOfThePlanTellsWhatRestsOnItAndLeadsThere() {
    browser.open(page);
    browser.run("document.querySelector('[data-line]').click()");
    assertThat(text("#why")).contains("On it rest");
    browser.run("document.querySelector('#why .go').click()");
    assertThat(browser.run("return document.querySelectorAll('#why details').length").asInt())
        .isGreaterThan(0);
    nothingIsAmiss();
  }

  @Test
  void aBoxOfTheDescentTellsGenerationCrossAndInbreeding() {
    browser.open(page);
    JsonNode at =
        browser.run(
            """
            const box = Array.from(document.querySelectorAll('.descent.wide a'))
              .find(a => a.querySelector('.name').textContent === 'tern-amber-f3');
            box.scrollIntoView({block: 'center'});
            const drawn = box.getBoundingClientRect();
            return [drawn.left + drawn.width / 2, drawn.top + drawn.height / 2]
            """);
    browser.tap(at.get(0).asDouble(), at.get(1).asDouble());
    assertThat(text("#why-title")).isEqualTo("tern-amber-f3");
    assertThat(text("#why-body")).contains("generation: F3", "cross:", "inbreeding: F =", "left");
    nothingIsAmiss();
  }

  @Test
  void aFruitOfTheDescentIsReachedByKeysAndQuotesTheRecord() {
    browser.open(page);
    browser.run(
        """
        Array.from(document.querySelectorAll('.descent.wide a'))
          .find(a => a.textContent.includes('selfed')).focus()
        """);
    browser.key("Enter");
    waitForReasons();
    assertThat(text("#why-body")).contains("selfed tern-amber-f3 plant ", "-2026.season:");
    assertThat(focused()).isEqualTo("why-title");
    nothingIsAmiss();
  }

  /** They are written when what holds them has opened, a moment after it was asked to. */
  private static void waitForReasons() {
    browser.runAsync(
        """
        const done = arguments[arguments.length - 1];
        const look = () => document.querySelector('#why li') ? done() : setTimeout(look, 20);
        look();
        """);
  }

  @Test
  void theKeysReachEverythingAndCloseWhatTheyOpened() {
    browser.open(muddle);
    int wanted =
        browser
            .run(
                """
                window.reached = new Set();
                document.addEventListener('focusin', e => window.reached.add(e.target));
                window.all = Array.from(document.querySelectorAll('a[href], button, summary'))
                  .filter(e => e.checkVisibility());
                return window.all.length
                """)
            .asInt();
    for (int i = 0; i < wanted + 2; i++) {
      browser.key("Tab");
    }
    JsonNode missed =
        browser.run(
            "return window.all.filter(e => !window.reached.has(e)).map(e => e.outerHTML.slice(0,"
                + " 200))");
    assertThat(missed).as("not reached").isEmpty();

    browser.run("document.querySelector('.row').focus()");
    browser.key("ArrowDown");
    browser.key("Enter");
    assertThat(browser.run("return document.getElementById('why').hidden").asBoolean()).isFalse();
    assertThat(focused()).isEqualTo("why-title");
    browser.key("Escape");
    assertThat(browser.run("return document.getElementById('why').hidden").asBoolean()).isTrue();
    assertThat(
            browser
                .run(
                    "return"
                        + " Array.from(document.querySelectorAll('.row')).indexOf(document.activeElement)")
                .asInt())
        .isEqualTo(1);
    nothingIsAmiss();
  }

  /** The drawing for a wide page is there too, and not shown. */
  @Test
  void onATelephoneClosingAnAnswerLeadsBackToWhatIsShown() {
    browser.resize(360, 740);
    browser.open(page);
    browser.run(
        """
        const drawn = document.querySelector('.descent.wide a[data-thing]').dataset.thing;
        const line = JSON.parse(document.getElementById('book').textContent).things[drawn][2];
        document.querySelector('[data-line="' + line + '"]').click();
        document.querySelector('#why .go').click();
        """);
    browser.key("Escape");
    JsonNode back =
        browser.run(
            """
            const at = document.activeElement;
            return [at !== document.body, at.getClientRects().length > 0]
            """);
    assertThat(back.get(0).asBoolean() && back.get(1).asBoolean()).as("focus is seen").isTrue();
    nothingIsAmiss();
  }

  /** Two findings on a line are beside its number, and so is its text. */
  @Test
  void aLineOfThePlanIsOneRowWhateverIsFoundOnIt() {
    browser.open(muddle);
    JsonNode apart =
        browser.run(
            """
            return Array.from(document.querySelectorAll('.line .marks'))
              .map(marks => marks.parentNode)
              .filter(line => Math.abs(line.querySelector('code').getBoundingClientRect().top
                - line.querySelector('.n').getBoundingClientRect().top) > 8)
              .map(line => line.id)
            """);
    assertThat(strings(apart)).isEmpty();
    nothingIsAmiss();
  }

  private static String focused() {
    return browser.run("return document.activeElement.id").asText();
  }

  @ParameterizedTest
  @CsvSource({"false, 1280", "true, 1280", "false, 360", "true, 360"})
  void axeFindsNothingSerious(boolean dark, int width) {
    browser.resize(width, 800);
    browser.dark(dark);
    browser.open(muddle);
    browser.run("document.querySelector('.row').click()");
    assertThat(barriers()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"page", "muddle", "hostile"})
  void nothingOverflowsATelephone(String which) {
    browser.resize(360, 740);
    browser.open(which.equals("page") ? page : which.equals("muddle") ? muddle : hostile);
    browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertThat(browser.run("return document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(360);
    browser.run("document.querySelector('.row').click()");
    browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
    JsonNode wide =
        browser.run(
            """
            return Array.from(document.querySelectorAll('body *'))
              .filter(e => !e.closest('svg') && e.getBoundingClientRect().right > 361)
              .filter(e => !e.classList.contains('unseen') && e.checkVisibility())
              .map(e => e.outerHTML.slice(0, 120))
            """);
    assertThat(strings(wide)).isEmpty();
  }

  @Test
  void aHostilePlanShowsItsTextAndRunsNothing() {
    browser.open(hostile);
    browser.run(
        "document.querySelectorAll('.row, .go, .garden a').forEach(e => e.dispatchEvent(new"
            + " MouseEvent('click', {bubbles: true, cancelable: true})))");
    assertThat(browser.run("return document.title").asText())
        .contains(Hostile.SCRIPT)
        .isNotEqualTo("run");
    assertThat(browser.run("return document.querySelectorAll('img, script').length").asInt())
        .as("the data and the script of ours")
        .isEqualTo(2);
    assertThat(text("h1")).contains("</title>" + Hostile.SCRIPT);
    assertThat(text("#season"))
        .contains("</script>" + Hostile.SCRIPT, "& &amp; &lt; {{data}} ${7*7} back");
    assertThat(
            browser
                .run("return document.querySelectorAll('[onclick], [onload], [onerror]').length")
                .asInt())
        .isZero();
    nothingIsAmiss();
  }

  @Test
  void onPaperEverythingKeepsItsName() {
    browser.open(page);
    browser.onPaper();
    JsonNode nameless =
        browser.run(
            """
            return Array.from(document.querySelectorAll('main .go:not(.ask)'))
              .filter(e => !e.closest('details:not([open])') && !e.checkVisibility())
              .map(e => e.outerHTML.slice(0, 120))
            """);
    assertThat(strings(nameless)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1280", "360"})
  void withoutScriptsEveryReasonIsThereAndEveryLinkLeadsToIt(int width) {
    browser.open(page);
    JsonNode says =
        browser.run(
            """
            const book = JSON.parse(document.getElementById('book').textContent);
            return book.reasons.map(r => r[0].replaceAll('`', ''))
              .concat(Object.values(book.things).flatMap(t => t[3].map(i => i[1].replaceAll('`', ''))))
            """);
    browser.scripts(false);
    browser.resize(width, 800);
    browser.open(page);
    assertThat(browser.run("return document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    List<String> lacking =
        strings(
            browser.run(
                """
                const squeezed = t => t.replace(/\\s+/g, '');
                const all = squeezed(document.getElementById('reasons').innerText);
                return arguments[0].filter(s => !all.includes(squeezed(s)))
                """,
                strings(says)));
    assertThat(says.size()).isGreaterThan(500);
    assertThat(lacking).isEmpty();
    JsonNode nowhere =
        browser.run(
            """
            return Array.from(document.querySelectorAll('a[href^="#"]'))
              .filter(a => !document.getElementById(a.getAttribute('href').slice(1)))
              .map(a => a.outerHTML.slice(0, 120))
            """);
    assertThat(strings(nowhere)).isEmpty();
    JsonNode dead =
        browser.run(
            """
            return Array.from(document.querySelectorAll('main button, .how'))
              .filter(e => e.checkVisibility()).map(e => e.outerHTML.slice(0, 120))
            """);
    assertThat(strings(dead)).as("what only a script makes work").isEmpty();
    nothingIsAmiss();
  }

  @Test
  void withoutScriptsAHostilePlanIsTextToo() {
    browser.scripts(false);
    browser.open(hostile);
    assertThat(text("#reasons")).contains(Hostile.SCRIPT);
    assertThat(browser.run("return document.querySelectorAll('img, script').length").asInt())
        .isEqualTo(2);
    nothingIsAmiss();
  }

  /** A4 pages that each section takes by itself, and the whole; the plan's text begins a page. */
  private static final Map<String, Integer> PAGES =
      Map.of(
          "season",
          2,
          "pollination",
          1,
          "fruit",
          5,
          "candidates",
          1,
          "garden",
          2,
          "seed",
          2,
          "descent",
          1,
          "findings",
          2,
          "text",
          14,
          "all",
          26);

  @Test
  void everySectionPrintsOnThePagesItNeeds() {
    browser.open(page);
    JsonNode sections =
        browser.run(
            "return Array.from(document.querySelectorAll('main > section, #text')).map(s => s.id)");
    Map<String, Integer> pages = new LinkedHashMap<>();
    for (String section : strings(sections)) {
      browser.run(
          """
          const all = 'main > section, .beside > section, header.top, footer';
          document.querySelectorAll(all).forEach(e => {
            e.style.setProperty('display', e.id === arguments[0] ? 'block' : 'none', 'important');
            e.style.setProperty('break-before', 'auto', 'important');
          });
          """,
          section);
      pages.put(section, Browser.pages(browser.print(21, 29.7)));
    }
    browser.open(page);
    pages.put("all", Browser.pages(browser.print(21, 29.7)));
    assertThat(pages).containsOnlyKeys(PAGES.keySet());
    pages.forEach(
        (section, sheets) -> {
          int wanted = PAGES.getOrDefault(section, 0);
          // Fonts differ; where a section has a page to itself there is room for that.
          int more = wanted == 1 ? 0 : 1;
          assertThat(sheets).as(section).isBetween(wanted - more, wanted + more);
        });
  }
}
