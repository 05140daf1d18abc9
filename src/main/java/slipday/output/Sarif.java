package slipday.output;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Label;
import slipday.finding.Mend;
import slipday.rules.RuleCatalog;
import slipday.rules.RulePage;
import slipday.source.Source;
import slipday.source.Span;

/**
 * Findings as a log of the Static Analysis Results Interchange Format, for tools that show them
 * beside the text: OASIS, SARIF Version 2.1.0 Plus Errata 01, 2023.
 */
public final class Sarif {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final List<String> rules;

  private Sarif(List<Finding> findings) {
    this.rules = findings.stream().map(Finding::rule).distinct().sorted().toList();
  }

  /**
   * @param version Slipday's
   */
  public static String text(List<Finding> findings, String version) {
    return Json.text(new Sarif(findings).log(findings, version));
  }

  private Map<String, Object> log(List<Finding> findings, String version) {
    Map<String, Object> driver = new LinkedHashMap<>();
    driver.put("name", "Slipday");
    driver.put("version", version);
    driver.put("rules", rules.stream().map(Sarif::rule).toList());
    Map<String, Object> run = new LinkedHashMap<>();
    run.put("tool", Map.of("driver", driver));
    run.put("columnKind", "utf16CodeUnits");
    run.put("results", findings.stream().map(this::result).toList());
    Map<String, Object> log = new LinkedHashMap<>();
    log.put("$schema", SCHEMA);
    log.put("version", "2.1.0");
    log.put("runs", List.of(run));
    return log;
  }

  private static Map<String, Object> rule(String id) {
    Map<String, Object> rule = new LinkedHashMap<>();
    rule.put("id", id);
    RulePage.of(id)
        .ifPresent(
            page -> {
              rule.put("shortDescription", message(page.sentence()));
              rule.put("fullDescription", message(page.section("Why it matters")));
              Map<String, Object> help = new LinkedHashMap<>();
              help.put("text", page.text());
              help.put("markdown", page.text());
              rule.put("help", help);
            });
    RuleCatalog.rule(id)
        .ifPresent(
            known -> rule.put("defaultConfiguration", Map.of("level", known.level().word())));
    return rule;
  }

  private Map<String, Object> result(Finding f) {
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("ruleId", f.rule());
    result.put("ruleIndex", rules.indexOf(f.rule()));
    result.put("level", f.level().word());
    result.put("message", message(whole(f)));
    result.put("locations", f.place().stream().map(l -> location(l, 0)).toList());
    if (!f.others().isEmpty()) {
      List<Map<String, Object>> related = new ArrayList<>();
      f.others().forEach(l -> related.add(location(l, related.size() + 1)));
      result.put("relatedLocations", related);
    }
    List<Map<String, Object>> fixes =
        f.mends().stream().filter(m -> !m.toFillIn()).map(Sarif::fix).toList();
    if (!fixes.isEmpty()) {
      result.put("fixes", fixes);
    }
    result.put("suppressions", f.allowed().stream().map(Sarif::suppression).toList());
    return result;
  }

  /** The sentence first, then figures and mend, a paragraph each. */
  private static String whole(Finding f) {
    Stream<String> more = Stream.concat(f.notes().stream(), Stream.of(f.help()));
    return String.join(
        "\n\n",
        Stream.concat(Stream.of(f.message()), more.filter(text -> !text.isEmpty())).toList());
  }

  private static Map<String, Object> suppression(String reason) {
    Map<String, Object> suppression = new LinkedHashMap<>();
    suppression.put("kind", "inSource");
    suppression.put("justification", reason);
    return suppression;
  }

  /** 3.55: a proposed fix, its edits by file; one that leaves a reason to fill in is none. */
  private static Map<String, Object> fix(Mend mend) {
    Map<String, List<Map<String, Object>>> byFile = new LinkedHashMap<>();
    for (Mend.Edit edit : mend.edits()) {
      Map<String, Object> replacement = new LinkedHashMap<>();
      replacement.put("deletedRegion", region(edit.place()));
      replacement.put("insertedContent", message(edit.text()));
      byFile
          .computeIfAbsent(uri(edit.place().source().name()), uri -> new ArrayList<>())
          .add(replacement);
    }
    List<Map<String, Object>> changes = new ArrayList<>();
    byFile.forEach(
        (uri, replacements) -> {
          Map<String, Object> change = new LinkedHashMap<>();
          change.put("artifactLocation", Map.of("uri", uri));
          change.put("replacements", replacements);
          changes.add(change);
        });
    Map<String, Object> fix = new LinkedHashMap<>();
    fix.put("description", message(mend.label()));
    fix.put("artifactChanges", changes);
    return fix;
  }

  private static Map<String, Object> message(String text) {
    return Map.of("text", text);
  }

  /**
   * @param id tells related places apart; 0 for none
   */
  private static Map<String, Object> location(Label label, int id) {
    Map<String, Object> physical = new LinkedHashMap<>();
    physical.put("artifactLocation", Map.of("uri", uri(label.span().source().name())));
    physical.put("region", region(label.span()));
    Map<String, Object> location = new LinkedHashMap<>();
    if (id > 0) {
      location.put("id", id);
    }
    location.put("physicalLocation", physical);
    if (!label.text().isEmpty()) {
      location.put("message", message(label.text()));
    }
    return location;
  }

  private static Map<String, Object> region(Span span) {
    Source source = span.source();
    Map<String, Object> region = new LinkedHashMap<>();
    region.put("startLine", span.line());
    region.put("startColumn", span.start() - source.lineStart(span.line()) + 1);
    region.put("endLine", span.endLine());
    region.put("endColumn", span.end() - source.lineStart(span.endLine()) + 1);
    return region;
  }

  /** A path as a URI reference, RFC 3986; an absolute one as a file URI, RFC 8089. */
  static String uri(String path) {
    StringBuilder out = new StringBuilder();
    boolean drive = path.matches("[A-Za-z]:/.*");
    if (drive || path.startsWith("/")) {
      out.append(drive ? "file:///" : "file://");
    } else if (path.indexOf(':') >= 0) {
      // What stands before a colon in the first part would read as a scheme.
      out.append("./");
    }
    for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
      boolean plain = b > 0 && ("-._~/:!$&'()*+,;=@".indexOf(b) >= 0 || isAlphanumeric(b));
      out.append(plain ? String.valueOf((char) b) : String.format(Locale.ROOT, "%%%02X", b));
    }
    return out.toString();
  }

  private static boolean isAlphanumeric(byte b) {
    return (b >= 'a' && b <= 'z') || (b >= 'A' && b <= 'Z') || (b >= '0' && b <= '9');
  }
}
