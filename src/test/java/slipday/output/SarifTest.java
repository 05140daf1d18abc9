package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Mend;
import slipday.source.Source;

/**
 * Checked against what OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0 Plus
 * Errata 01, 2023, requires; the section, from memory, stands beside each check.
 */
class SarifTest {
  private static final Source PLAN =
      Source.of("plans/my plan.season", "bed \uD83C\uDF48 x\nbed \u00FC y\n");
  private static final List<Finding> FINDINGS =
      List.of(
          Finding.placeless("unusable-file", Level.ERROR, "There is no file `x`."),
          Finding.error("name-twice", PLAN.span(7, 8), "There are two beds called `x`.")
              .labelled("declared again")
              .also(PLAN.span(0, 3), "declared first")
              .withNote("A note.")
              .withHelp("Give one of them another name.")
              .writing("y")
              .withMend(
                  new Mend("Allow it", List.of(new Mend.Edit(PLAN.span(16, 16), "allow")), true)),
          Finding.warning("same-family-again", PLAN.span(9, 16), "It comes again.")
              .allowedBecause("the only bed with water"));

  private final JsonNode log = read(Sarif.text(FINDINGS, "0.1.0"));
  private final JsonNode run = log.get("runs").get(0);

  private static JsonNode read(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void theLogNamesItsVersionAndSchema() {
    // 3.13.2 and 3.13.3: version is required and is "2.1.0"; $schema is a URI of that version.
    assertThat(log.get("version").asText()).isEqualTo("2.1.0");
    assertThat(log.get("$schema").asText()).startsWith("https://").contains("2.1.0");
    // 3.13.4: runs is required.
    assertThat(log.get("runs")).hasSize(1);
  }

  @Test
  void theRunNamesItsToolAndCountsColumnsInUtf16() {
    // 3.14.6 and 3.18.2: a run has a tool, a tool a driver; 3.19.8: a driver has a name.
    JsonNode driver = run.get("tool").get("driver");
    assertThat(driver.get("name").asText()).isNotEmpty();
    // 3.14: columnKind is utf16CodeUnits or unicodeCodePoints.
    assertThat(run.get("columnKind").asText()).isEqualTo("utf16CodeUnits");
  }

  @Test
  void everyResultHasAMessageALevelAndItsRule() {
    JsonNode rules = run.get("tool").get("driver").get("rules");
    assertThat(run.get("results")).hasSize(3);
    for (JsonNode result : run.get("results")) {
      // 3.27.11: message is required, and 3.11.8: it has a text.
      assertThat(result.get("message").get("text").asText()).isNotEmpty();
      // 3.27.10: level is one of four.
      assertThat(Set.of("none", "note", "warning", "error")).contains(result.get("level").asText());
      // 3.27.6: ruleIndex is the place of the rule of that id in the driver's rules.
      JsonNode rule = rules.get(result.get("ruleIndex").asInt());
      assertThat(rule.get("id")).isEqualTo(result.get("ruleId"));
      // 3.27.12: locations is an array, empty where nothing can be pointed at.
      assertThat(result.get("locations").isArray()).isTrue();
    }
  }

  @Test
  void rulesComeWithTheirPages() {
    JsonNode rules = run.get("tool").get("driver").get("rules");
    for (JsonNode rule : rules) {
      // 3.49.3: id is required; 3.49.9 to 3.49.13: descriptions and help have a text.
      assertThat(rule.get("id").asText()).isNotEmpty();
      assertThat(rule.get("shortDescription").get("text").asText()).endsWith(".");
      assertThat(rule.get("help").get("text").asText()).contains("What it finds");
    }
    // 3.50.3: the level a rule has by default.
    assertThat(rules.findValue("defaultConfiguration").get("level").asText()).isEqualTo("warning");
  }

  @Test
  void placesAreUriReferencesAndRegions() {
    JsonNode result = run.get("results").get(1);
    JsonNode place = result.get("locations").get(0).get("physicalLocation");
    // 3.4.3 and RFC 3986: a space is written %20.
    assertThat(place.get("artifactLocation").get("uri").asText())
        .isEqualTo("plans/my%20plan.season");
    // 3.30.5 to 3.30.8: lines and columns from 1, the end just past the last character. The melon
    // before the x is two UTF-16 units.
    JsonNode region = place.get("region");
    assertThat(region.get("startLine").asInt()).isEqualTo(1);
    assertThat(region.get("startColumn").asInt()).isEqualTo(8);
    assertThat(region.get("endLine").asInt()).isEqualTo(1);
    assertThat(region.get("endColumn").asInt()).isEqualTo(9);
    // 3.27.22 and 3.28.2: related places, each with an id of its own.
    JsonNode related = result.get("relatedLocations");
    assertThat(related).hasSize(1);
    assertThat(related.get(0).get("id").asInt()).isEqualTo(1);
    assertThat(related.get(0).get("message").get("text").asText()).isEqualTo("declared first");
  }

  @Test
  void whatWouldMendAResultIsAFix() {
    assertThat(run.get("results").get(0).has("fixes")).isFalse();
    // What leaves something to fill in is no fix.
    JsonNode fixes = run.get("results").get(1).get("fixes");
    assertThat(fixes).hasSize(1);
    // 3.55.2 and 3.55.3: a description, and at least one artifact change.
    assertThat(fixes.get(0).get("description").get("text").asText()).isEqualTo("Write `y`");
    JsonNode change = fixes.get(0).get("artifactChanges").get(0);
    // 3.56.2 and 3.56.3: the artifact's location, and at least one replacement.
    assertThat(change.get("artifactLocation").get("uri").asText())
        .isEqualTo("plans/my%20plan.season");
    JsonNode replacement = change.get("replacements").get(0);
    // 3.57.3 and 3.57.4: the region to be deleted, and what is put in its place.
    assertThat(replacement.get("deletedRegion").get("startColumn").asInt()).isEqualTo(8);
    assertThat(replacement.get("deletedRegion").get("endColumn").asInt()).isEqualTo(9);
    assertThat(replacement.get("insertedContent").get("text").asText()).isEqualTo("y");
  }

  @Test
  void whatIsAllowedIsSuppressedInSourceWithItsReason() {
    // 3.27.23: where one result tells its suppressions all do, with none for those that stand.
    assertThat(run.get("results").get(1).get("suppressions")).isEmpty();
    JsonNode suppressions = run.get("results").get(2).get("suppressions");
    // 3.35: kind is required; the justification is the user's.
    assertThat(suppressions.get(0).get("kind").asText()).isEqualTo("inSource");
    assertThat(suppressions.get(0).get("justification").asText())
        .isEqualTo("the only bed with water");
  }

  @Test
  void absolutePathsAreFileUris() {
    assertThat(Sarif.uri("/gardens/plan.season")).isEqualTo("file:///gardens/plan.season");
    assertThat(Sarif.uri("C:/gardens/plan.season")).isEqualTo("file:///C:/gardens/plan.season");
    assertThat(Sarif.uri("a:b.season")).isEqualTo("./a:b.season");
    assertThat(Sarif.uri("caf\u00E9.season")).isEqualTo("caf%C3%A9.season");
  }
}
