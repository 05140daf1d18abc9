package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slipday.app.BuiltInCrops;
import slipday.garden.CropBook;
import slipday.measure.Listed;
import slipday.output.data.CropsData;
import slipday.output.data.CropsData.EntryData;
import slipday.output.data.CropsData.FactData;
import slipday.output.data.CropsData.OtherNameData;
import slipday.output.data.CropsData.SpeciesData;
import slipday.testing.Golden;

/** docs/crops.md is written from the crop files, and has every fact of theirs with its source. */
class CropsDocTest {
  private static final Path PAGE = Path.of("docs/crops.md");
  private static final String BEGIN = "<!-- crops: begin -->\n";
  private static final String END = "<!-- crops: end -->\n";

  private final CropBook book = BuiltInCrops.book();
  private final List<String> sources = new ArrayList<>();
  private int facts;

  @Test
  void thePageHasEveryFactInForce() {
    String page = Golden.read(PAGE);
    assertThat(page).contains(BEGIN).contains(END);
    String before = page.substring(0, page.indexOf(BEGIN) + BEGIN.length());
    String after = page.substring(page.indexOf(END));
    Golden.check(PAGE, before + "\n" + reference() + "\n" + after);
    assertThat(facts).isGreaterThan(900);
    assertThat(sources).hasSizeGreaterThan(20);
  }

  @Test
  void thePageOfTheLanguageNamesEveryCrop() {
    Path language = Path.of("docs/language.md");
    String page = Golden.read(language);
    String begin = "<!-- names: begin -->\n";
    int end = page.indexOf("<!-- names: end -->");
    String before = page.substring(0, page.indexOf(begin) + begin.length());
    Golden.check(language, before + "\n" + names() + "\n" + page.substring(end));
    assertThat(page).contains("`acorn-squash`", "`wild-melon`");
  }

  private String names() {
    StringBuilder out = new StringBuilder("| species | | crops |\n| --- | --- | --- |\n");
    Map<String, List<String>> asked = new TreeMap<>();
    for (SpeciesData species : CropsData.list(Optional.empty(), book).species()) {
      List<String> crops = species.crops().stream().map(c -> named(c, species)).toList();
      out.append("| `").append(species.name()).append("` | *").append(species.latin());
      out.append("* | ").append(String.join(", ", crops)).append(" |\n");
      species.otherNames().stream()
          .filter(n -> !n.alone())
          .forEach(n -> asked.computeIfAbsent(n.name(), w -> new ArrayList<>()).add(told(n)));
    }
    out.append("\nA word in brackets is taken for the name before it. Words that mean one crop to");
    out.append(" some and another to others are not: whoever writes one is asked which.\n\n");
    out.append("| word | may mean |\n| --- | --- |\n");
    asked.forEach((word, may) -> out.append("| " + word + " | " + Listed.either(may) + " |\n"));
    return out.toString();
  }

  private static String named(String crop, SpeciesData species) {
    List<String> words =
        species.otherNames().stream()
            .filter(n -> n.crop().equals(crop) && n.alone())
            .map(n -> "`" + n.name() + "`")
            .toList();
    return "`" + crop + "`" + (words.isEmpty() ? "" : " (" + String.join(", ", words) + ")");
  }

  private static String told(OtherNameData other) {
    return "`" + other.crop() + "`" + (other.where().isEmpty() ? "" : " in " + other.where());
  }

  private String reference() {
    StringBuilder out = new StringBuilder();
    for (SpeciesData species : CropsData.list(Optional.empty(), book).species()) {
      String latin = "*" + species.latin() + "*";
      out.append("## ").append(species.name()).append("\n\n").append(latin).append("\n\n");
      out.append(table(entry(species.name(), "species")));
      for (String crop : species.crops()) {
        out.append("### ").append(crop).append("\n\n").append(called(entry(crop, "crop")));
        out.append(table(entry(crop, "crop")));
      }
    }
    out.append("## Publications\n\n");
    for (int i = 0; i < sources.size(); i++) {
      out.append(i + 1).append(". ").append(escaped(sources.get(i))).append('\n');
    }
    return out.toString();
  }

  private static String called(EntryData entry) {
    List<String> words =
        entry.otherNames().stream()
            .map(n -> n.name() + (n.where().isEmpty() ? "" : " in " + n.where()))
            .toList();
    return words.isEmpty() ? "" : "Also called " + String.join(", ", words) + ".\n\n";
  }

  /** A name may be both a species' and a crop's. */
  private EntryData entry(String name, String kind) {
    return CropsData.all(book).stream()
        .filter(e -> e.name().equals(name) && e.kind().equals(kind))
        .findFirst()
        .orElseThrow();
  }

  /** What is said of it itself; the facts of its species stand with that. */
  private String table(EntryData entry) {
    List<FactData> own =
        entry.facts().stream()
            .filter(f -> f.owner().equals(entry.kind() + " " + entry.name()))
            .toList();
    if (own.isEmpty()) {
      return "As its species.\n\n";
    }
    StringBuilder out = new StringBuilder("| fact | source |\n| --- | --- |\n");
    for (FactData fact : own) {
      facts++;
      out.append("| `").append(escaped(fact.words())).append("` | ");
      out.append(source(fact)).append(" |\n");
    }
    return out.append('\n').toString();
  }

  private String source(FactData fact) {
    assertThat(fact.basis()).as(fact.words()).isNotEqualTo("plan");
    if (fact.source().isEmpty()) {
      return "common practice";
    }
    if (!sources.contains(fact.source())) {
      sources.add(fact.source());
    }
    int number = sources.indexOf(fact.source()) + 1;
    return number + (fact.basis().equals("from-memory") ? ", from memory" : "");
  }

  private static String escaped(String text) {
    return text.replace("|", "\\|");
  }
}
