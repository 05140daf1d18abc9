package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.app.BuiltInCrops;
import slipday.caution.Caution;
import slipday.garden.Crop;
import slipday.garden.CropFacts;
import slipday.testing.Golden;

/** Cautions stand in one place's words, on their page and wherever else a text speaks of them. */
class CautionsDocTest {
  private static final Path PAGE = Path.of("docs/cautions.md");
  private static final Pattern MARK =
      Pattern.compile("(<!-- said: (\\S+) -->\n).*?(<!-- end -->)", Pattern.DOTALL);

  /** What betrays a caution, and the one that it must then be, word for word. */
  private static final Map<String, Caution> BETRAYS =
      Map.of(
          "to the tongue", Caution.TASTE_FIRST,
          "[Cc]ooking", Caution.POISON,
          "poison cent", Caution.POISON,
          "bleach", Caution.SEED_TREATMENT,
          "nausea|dizz", Caution.WORK_IN_HEAT,
          "plant-variety", Caution.LAW);

  @Test
  void thePageSaysThemAsTheFindingsDo() {
    String page = Golden.read(PAGE);
    List<String> said = new ArrayList<>();
    String renewed =
        MARK.matcher(page)
            .replaceAll(
                m -> {
                  said.add(m.group(2));
                  return Matcher.quoteReplacement(
                      m.group(1) + "\n> " + words(m.group(2)) + "\n\n" + m.group(3));
                });
    Golden.check(PAGE, renewed);
    assertThat(said).contains("CUT_FRUIT").doesNotHaveDuplicates();
    assertThat(said).containsAll(Stream.of(Caution.values()).map(Enum::name).toList());
  }

  @Test
  void thePageAndTheRuleNameTheSpeciesThatHaveBitterKin() {
    assertThat(BuiltInCrops.book().crops().values().stream().filter(Crop::isBitter))
        .extracting(c -> c.species().latin())
        .containsOnly("Cucumis sativus", "Cucumis melo", "Citrullus lanatus", "Cucurbita pepo");
    for (Path page : List.of(PAGE, Path.of("src/main/resources/slipday/rules/may-be-bitter.md"))) {
      assertThat(Golden.read(page).replaceAll("\\s+", " "))
          .contains("cucumber, melon, watermelon, and *Cucurbita pepo* of the squashes");
    }
  }

  private static String words(String name) {
    return name.equals("CUT_FRUIT")
        ? "Once cut, the fruit is " + cut() + "."
        : Caution.valueOf(name).words();
  }

  /** The crops' own fact; melon and watermelon say it alike. */
  private static String cut() {
    List<String> told =
        Stream.of("melon", "watermelon")
            .map(s -> BuiltInCrops.book().species().get(s).facts().get(CropFacts.ONCE_CUT))
            .map(f -> f.orElseThrow().value().toString())
            .distinct()
            .toList();
    assertThat(told).hasSize(1);
    return told.get(0);
  }

  @Test
  void noOtherCodeHasWordsOfItsOwn() throws IOException {
    for (Path file : files("src/main/java", ".java")) {
      String text = Golden.read(file);
      if (!file.endsWith("Caution.java")) {
        BETRAYS.keySet().forEach(p -> assertThat(text).as("%s", file).doesNotContainPattern(p));
      }
    }
  }

  @Test
  void pagesThatSpeakOfItSayItInFull() throws IOException {
    List<Path> pages = new ArrayList<>(files("src/main/resources/slipday/rules", ".md"));
    pages.add(Path.of("README.md"));
    int found = 0;
    for (Path page : pages) {
      String text = Golden.read(page).replaceAll("\\s+", " ");
      for (Map.Entry<String, Caution> each : BETRAYS.entrySet()) {
        if (Pattern.compile(each.getKey()).matcher(text).find()) {
          found++;
          assertThat(text).as("%s", page).contains(each.getValue().words());
        }
      }
    }
    assertThat(found).isGreaterThan(8);
  }

  private static List<Path> files(String folder, String end) throws IOException {
    try (Stream<Path> all = Files.walk(Path.of(folder))) {
      return all.filter(p -> p.toString().endsWith(end)).sorted().toList();
    }
  }
}
