package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipday.outside.Browser;

/**
 * The pictures in the docs are made here, of the example garden, and still show what the page looks
 * like. Fonts differ from machine to machine, so that no two machines draw quite alike: light and
 * dark are compared over a coarse grid. With {@code -Dupdate} a picture that is missing or shows
 * something else is written, and the run fails.
 */
class DocPicturesTest {
  private static final Path PICTURES = Path.of("docs", "pictures");
  private static final int MOST_BYTES = 200_000;
  private static final int COLUMNS = 24;
  private static final int ROWS = 20;

  /** Correlation of the cells; of two different pictures here it is under 0.5. */
  private static final double ALIKE = 0.8;

  private static final Map<String, String> YEAR_OVER = Map.of("SOURCE_DATE_EPOCH", "1798600000");

  @TempDir static Path folder;
  private static Browser browser;
  private static Path july;
  private static Path october;

  /** What is shown, on what. */
  enum Picture {
    SEASON("season-on-a-laptop", 1100, 760, false),
    REASONS("reasons-on-a-phone", 390, 780, true),
    GARDEN("garden-on-a-laptop", 900, 760, true),
    CANDIDATES("candidates-on-a-laptop", 1100, 820, false),
    GENERATIONS("generations-on-a-phone", 390, 780, false),
    DESCENT("descent-on-a-laptop", 1100, 760, false);

    private final String file;
    private final int width;
    private final int height;
    private final boolean dark;

    Picture(String file, int width, int height, boolean dark) {
      this.file = file + ".png";
      this.width = width;
      this.height = height;
      this.dark = dark;
    }

    /** Whether it shows what there is to see once fruit was measured and seed taken. */
    private boolean afterHarvest() {
      return this == CANDIDATES || this == GENERATIONS || this == DESCENT;
    }
  }

  @BeforeAll
  static void writeThePages() throws IOException {
    browser = Browser.start();
    july = written("2026-07-20");
    october = written("2026-10-30");
  }

  private static Path written(String day) throws IOException {
    String plan = "plans/tern-hollow/recorded.season";
    Run run = Run.in(Path.of(""), new byte[0], YEAR_OVER, false, "report", plan, "--date", day);
    return Files.writeString(folder.resolve(day + ".html"), run.out());
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static byte[] taken(Picture picture) {
    browser.resize(picture.width, picture.height);
    browser.dark(picture.dark);
    browser.open(picture.afterHarvest() ? october : july);
    return switch (picture) {
      case SEASON -> section("season", picture);
      case GARDEN -> section("garden", picture);
      case DESCENT -> section("descent", picture);
      case CANDIDATES -> section("candidates", picture);
      case GENERATIONS -> section("generations", picture);
      case REASONS -> reasons();
    };
  }

  private static byte[] section(String id, Picture picture) {
    JsonNode top =
        browser.runAsync(
            """
            const done = arguments[1];
            document.querySelectorAll('.rows > li').forEach(
              row => { row.style.contentVisibility = 'visible'; });
            const place = () => document.getElementById(arguments[0]).getBoundingClientRect().top;
            requestAnimationFrame(() => requestAnimationFrame(() => done(place() + scrollY)));
            """,
            id);
    return browser.picture(0, top.asDouble(), picture.width, picture.height, 1);
  }

  /** A bar, and under it why its fruit is ripe when it is. */
  private static byte[] reasons() {
    browser.runAsync(
        """
        const done = arguments[arguments.length - 1];
        const why = document.getElementById('why');
        const row = document.querySelector('.row');
        row.click();
        document.querySelectorAll('#why details').forEach(
          d => { d.open = d.querySelector('summary b').textContent === 'ripe'; });
        document.documentElement.style.scrollBehavior = 'auto';
        window.scrollTo(0, row.getBoundingClientRect().top + window.scrollY - 90);
        const look = () => {
          if (!document.querySelector('#why details[open] li')) { return setTimeout(look, 20); }
          why.scrollTop = document.querySelector('#why details[open]').offsetTop - 70;
          requestAnimationFrame(() => done());
        };
        look();
        """);
    return browser.screen();
  }

  @ParameterizedTest
  @EnumSource
  void showsWhatThePageLooksLike(Picture picture) throws IOException {
    byte[] now = taken(picture);
    assertThat(now.length).isLessThan(MOST_BYTES);
    Path file = PICTURES.resolve(picture.file);
    boolean alike =
        Files.exists(file) && alikeness(read(Files.readAllBytes(file)), read(now)) >= ALIKE;
    if (!alike && System.getProperty("update") != null && System.getenv("CI") == null) {
      Files.createDirectories(PICTURES);
      Files.write(file, now);
      fail(file + " is renewed: look at it, then run again without -Dupdate.");
    }
    assertThat(alike).as(file + " shows the page as it is; -Dupdate renews it").isTrue();
    BufferedImage kept = read(Files.readAllBytes(file));
    assertThat(List.of(kept.getWidth(), kept.getHeight()))
        .containsExactly(picture.width, picture.height);
  }

  @Test
  void tellsOnePictureFromAnotherAndFromABlankOne() throws IOException {
    BufferedImage season = read(taken(Picture.SEASON));
    BufferedImage descent = read(taken(Picture.DESCENT));
    assertThat(alikeness(season, season)).isGreaterThan(0.999);
    assertThat(alikeness(season, descent)).isLessThan(0.5);
    BufferedImage blank = new BufferedImage(1100, 760, BufferedImage.TYPE_INT_RGB);
    assertThat(alikeness(blank, descent)).isLessThan(0.5);
  }

  @Test
  void everyPictureIsShownInTheDocsAndSaysWhatItShows() throws IOException {
    String docs =
        Files.readString(Path.of("README.md")).replace("](docs/", "](")
            + Files.readString(Path.of("docs", "tour.md"));
    List<String> shown =
        Pattern.compile("!\\[([^\\]]{20,})\\]\\(pictures/([a-z-]+\\.png)\\)")
            .matcher(docs)
            .results()
            .map(r -> r.group(2))
            .distinct()
            .toList();
    List<String> made = Arrays.stream(Picture.values()).map(p -> p.file).toList();
    assertThat(shown).containsExactlyInAnyOrderElementsOf(made);
    try (Stream<Path> kept = Files.list(PICTURES)) {
      assertThat(kept.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(made);
    }
  }

  private static BufferedImage read(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  /** The correlation of how light the cells of a grid are, −1 to 1; 0 for a blank one. */
  private static double alikeness(BufferedImage one, BufferedImage other) {
    double[] a = cells(one);
    double[] b = cells(other);
    double meanA = Arrays.stream(a).average().orElse(0);
    double meanB = Arrays.stream(b).average().orElse(0);
    double together = 0;
    double spreadA = 0;
    double spreadB = 0;
    for (int i = 0; i < a.length; i++) {
      together += (a[i] - meanA) * (b[i] - meanB);
      spreadA += (a[i] - meanA) * (a[i] - meanA);
      spreadB += (b[i] - meanB) * (b[i] - meanB);
    }
    double spread = Math.sqrt(spreadA * spreadB);
    return spread == 0 ? 0 : together / spread;
  }

  private static double[] cells(BufferedImage image) {
    double[] light = new double[COLUMNS * ROWS];
    int[] dots = new int[COLUMNS * ROWS];
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int cell = y * ROWS / image.getHeight() * COLUMNS + x * COLUMNS / image.getWidth();
        int rgb = image.getRGB(x, y);
        light[cell] += (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
        dots[cell]++;
      }
    }
    for (int i = 0; i < light.length; i++) {
      light[i] /= Math.max(1, dots[i]);
    }
    return light;
  }
}
