package slipday.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Size, documentation and wording of the sources. */
class SourcesTest {
  private static final String MAIN = "src/main/java";
  private static final int LINES_AT_MOST = 400;
  private static final int LINES_OF_A_RULE_AT_MOST = 200;

  /** Crops and species are data in our own language; code that names one has a special case. */
  private static final Pattern CROP =
      Pattern.compile(
          "\\b((musk|water)?melons?|honeydews?|casabas?|squash(es)?|pumpkins?|gourds?|zucchinis?"
              + "|courgettes?|butternuts?|citrons?|cucumbers?|gherkins?|corn|maize|beans?|peas?"
              + "|tomato(es)?|peppers?|cucurbita|cucumis|citrullus|lagenaria|melo|sativus|lanatus"
              + "|pepo|moschata|maxima|argyrosperma|zea|mays|solanum|capsicum|phaseolus|pisum)\\b",
          Pattern.CASE_INSENSITIVE);

  /** Files that may name a crop in a literal, each with the reason. */
  private static final Map<String, String> MAY_NAME_CROPS =
      Map.of(
          MAIN + "/slipday/language/CropClauses.java", "examples of the clauses, for documentation",
          MAIN + "/slipday/language/PlanClauses.java", "examples of the clauses, for documentation",
          MAIN + "/slipday/language/GoalClauses.java", "examples of the clauses, for documentation",
          MAIN + "/slipday/language/KindClauses.java", "examples of the clauses, for documentation",
          MAIN + "/slipday/language/Declaration.java", "examples of the blocks, for documentation",
          MAIN + "/slipday/command/CropsCommand.java", "examples in the command's help",
          MAIN + "/slipday/command/OddsCommand.java", "examples in the command's help");

  @Test
  void noFileIsTooLongToRead() {
    List<String> tooLong = new ArrayList<>();
    for (String folder : List.of(MAIN, "src/test/java", "src/bench/java")) {
      Texts.java(folder)
          .forEach(
              (file, text) -> {
                boolean rule = file.startsWith(MAIN + "/slipday/rules/");
                int most = rule ? LINES_OF_A_RULE_AT_MOST : LINES_AT_MOST;
                if (text.lines().count() > most) {
                  tooLong.add(file + ": " + text.lines().count() + " lines, " + most + " at most");
                }
              });
    }
    assertThat(tooLong).isEmpty();
  }

  @Test
  void everyPackageSaysWhatItIsFor() {
    Map<String, String> sources = Texts.java(MAIN);
    Set<String> packages = new TreeSet<>();
    sources.keySet().forEach(file -> packages.add(file.substring(0, file.lastIndexOf('/'))));
    assertThat(packages)
        .isNotEmpty()
        .allSatisfy(
            folder ->
                assertThat(sources.get(folder + "/package-info.java"))
                    .as(folder + "/package-info.java")
                    .isNotNull()
                    .contains("@NullMarked")
                    .containsPattern("(?s)^/\\*\\*.*\\w.*\\*/\\s*@NullMarked"));
  }

  /** What is asked in words in many places would be mended in none by an editor. */
  @Test
  void peopleAreAskedInOnePlaceWhatTheyMeant() {
    Set<String> asking = new TreeSet<>();
    Texts.java(MAIN)
        .forEach(
            (file, text) -> {
              if (text.contains("Did you mean")) {
                asking.add(file);
              }
            });
    assertThat(asking).containsExactly(MAIN + "/slipday/finding/Nearest.java");
  }

  @Test
  void noCropIsNamedInCode() {
    List<String> named = new ArrayList<>();
    Texts.java(MAIN)
        .forEach(
            (file, text) -> {
              if (!MAY_NAME_CROPS.containsKey(file)) {
                crops(text).forEach(crop -> named.add(file + ": " + crop));
              }
            });
    assertThat(named).isEmpty();
  }

  @Test
  void everyFileThatMayNameCropsDoes() {
    assertThat(MAY_NAME_CROPS.keySet())
        .allSatisfy(
            file -> assertThat(crops(Texts.java(MAIN).getOrDefault(file, ""))).isNotEmpty());
  }

  @Test
  void cropsAreFoundInLiteralsAndNowhereElse() {
    assertThat(crops("String s = \"the Melon's vine\";")).containsExactly("Melon");
    assertThat(crops("String s = \"\"\"\n  zea \"mays\"\n  \"\"\";"))
        .containsExactly("zea", "mays");
    assertThat(crops("/* a melon */ int pepo = 'c'; // \"squash\"\n")).isEmpty();
    assertThat(crops("char c = '\"'; int melon; String s = \"// corn\";")).containsExactly("corn");
    assertThat(crops("String s = \"cornet, melonic\";")).isEmpty();
  }

  private static List<String> crops(String javaSource) {
    return Texts.literals(javaSource).stream()
        .flatMap(literal -> CROP.matcher(literal).results().map(r -> r.group()))
        .toList();
  }
}
