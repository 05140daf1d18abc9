package slipday.whole;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import slipday.testing.Golden;

/**
 * Whatever is written, everything that is made of it ends in findings. A try is a whole season with
 * all its outputs, so these properties have few of their own; {@code -Dslipday.whole=20} makes each
 * do twenty times as many, and the long run does.
 */
class WholeTripProperties {
  private static final String FIRST = "plan.season";
  private static final int EACH = Integer.getInteger("slipday.whole", 1);
  private static final Duration HANGS = Duration.ofSeconds(60);

  /** Six years of the invented record are as good as thirty here, and quicker. */
  private static final String WEATHER =
      Golden.read(Path.of("plans/tern-hollow/weather/tern-hollow.csv"))
          .lines()
          .filter(l -> l.startsWith("#") || l.startsWith("date") || l.compareTo("2020") > 0)
          .collect(Collectors.joining("\n", "", "\n"));

  private static final List<Map<String, String>> GARDENS =
      List.of(
          ternHollow("recorded.season", "record/alma-2026.season", "record/jory-2026.season"),
          ternHollow("muddle.season"),
          withoutWeather(ternHollow("plan.season")),
          seedRoom());

  private static Map<String, String> ternHollow(String first, String... more) {
    Map<String, String> texts = new TreeMap<>();
    Path folder = Path.of("plans/tern-hollow");
    texts.put(FIRST, Golden.read(folder.resolve(first)).replace("plan.season", "the-plan.season"));
    texts.put("the-plan.season", Golden.read(folder.resolve("plan.season")));
    List.of(more).forEach(name -> texts.put(name, Golden.read(folder.resolve(name))));
    texts.put("weather/tern-hollow.csv", WEATHER);
    return texts;
  }

  private static Map<String, String> withoutWeather(Map<String, String> texts) {
    texts.computeIfPresent(
        FIRST,
        (name, text) ->
            text.replaceFirst(
                "  weather .*",
                """
                  last frost 18 May, 1 in 10 after 30 May
                  first frost 27 September, 1 in 10 before 14 September
                  soil 12 C on 10 May\
                """));
    return texts;
  }

  private static Map<String, String> seedRoom() {
    Path folder = Path.of("src/test/resources/cases/command/seed-room");
    Map<String, String> texts = new TreeMap<>();
    for (String name : List.of(FIRST, "record-2025.season", "record-2026.season")) {
      texts.put(name, Golden.read(folder.resolve(name)));
    }
    return texts;
  }

  @Test
  void theGardensThemselvesHaveSeasons() {
    for (Map<String, String> garden : GARDENS) {
      org.assertj.core.api.Assertions.assertThat(Trip.whole(FIRST, garden)).isTrue();
    }
  }

  @Property(tries = 120)
  void aSpoiltGardenEndsInFindings(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int times) {
    for (int i = 0; i < EACH; i++) {
      Mutation mutation = new Mutation(seed + i * 31L);
      Map<String, String> garden = new TreeMap<>(GARDENS.get((int) Math.floorMod(seed + i, 4L)));
      List<String> names = List.copyOf(garden.keySet());
      String name = Math.floorMod(seed / 7, 3L) == 0 ? FIRST : mutation.anyOf(names);
      garden.computeIfPresent(name, (n, text) -> mutation.of(text, times));
      assertTimeoutPreemptively(HANGS, () -> Trip.whole(FIRST, garden));
    }
  }

  @Property(tries = 300)
  void anyTextEndsInFindings(@ForAll String text) {
    assertTimeoutPreemptively(HANGS, () -> Trip.whole(FIRST, Map.of(FIRST, text)));
  }
}
