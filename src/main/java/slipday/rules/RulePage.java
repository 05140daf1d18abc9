package slipday.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one text about a rule, under fixed headings. {@code explain} prints it, the documentation is
 * made of it, and its examples are run.
 *
 * @param id the rule's
 * @param text the whole page, in Markdown
 */
public record RulePage(String id, String text) {
  /** Every page has these, in this order. */
  public static final List<String> HEADINGS =
      List.of("What it finds", "Why it matters", "Example", "Instead", "Sources");

  private static final String FOLDER = "/slipday/rules/";
  private static final Pattern FENCE = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");

  /** The page of a rule, or of anything else that findings carry as their id. */
  public static Optional<RulePage> of(String id) {
    return RuleCatalog.ids().contains(id)
        ? Optional.of(new RulePage(id, read(id + ".md")))
        : Optional.empty();
  }

  /** The lines that an example stands under, where it has no {@code season} of its own. */
  public static String preamble() {
    return read("preamble.season");
  }

  /** Every page, by id. */
  public static List<RulePage> all() {
    return RuleCatalog.ids().stream().map(id -> new RulePage(id, read(id + ".md"))).toList();
  }

  /** A text under one heading, without the heading; empty where there is no such heading. */
  public String section(String heading) {
    String start = "\n## " + heading + "\n";
    int from = text.indexOf(start);
    if (from < 0) {
      return "";
    }
    int to = text.indexOf("\n## ", from + 1);
    return text.substring(from + start.length(), to < 0 ? text.length() : to).strip();
  }

  /** What it finds: the page's first sentence. */
  public String sentence() {
    String finds = section("What it finds").replaceAll("\\s+", " ");
    int stop = finds.indexOf(". ");
    return stop < 0 ? finds : finds.substring(0, stop + 1);
  }

  /** The headings as they stand. */
  public List<String> headings() {
    return text.lines().filter(l -> l.startsWith("## ")).map(l -> l.substring(3)).toList();
  }

  /**
   * A block of code under a heading; the kind is {@code season}, {@code csv} for weather, {@code
   * console} for a command, or {@code text} for what is only described.
   */
  public record Example(String kind, String text) {
    /** The plan in full: a part is put under the common beginning. */
    public String plan() {
      return text.startsWith("season ") ? text : preamble() + "\n" + text;
    }
  }

  /** The blocks of code under a heading. */
  public List<Example> examples(String heading) {
    List<Example> found = new ArrayList<>();
    Matcher matcher = FENCE.matcher(section(heading));
    while (matcher.find()) {
      found.add(new Example(matcher.group(1), matcher.group(2)));
    }
    return found;
  }

  /** The whole reference, made of every page. */
  public static String reference() {
    StringBuilder all = new StringBuilder();
    all.append("# Rules\n\nEvery finding carries the id of one of these. ")
        .append("`slipday explain ID` prints a page of its own.\n\n")
        .append(
            "An example without a `season` of its own stands under this beginning:\n\n```season\n")
        .append(preamble())
        .append("```\n\n");
    for (RulePage page : all()) {
      all.append("- [").append(page.id()).append("](#").append(page.id()).append("): ");
      all.append(page.sentence()).append('\n');
    }
    for (RulePage page : all()) {
      all.append('\n').append(page.text().replaceAll("(?m)^(##?) ", "$1# ").strip()).append('\n');
    }
    return all.toString();
  }

  private static String read(String name) {
    try (InputStream in = RulePage.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("no page " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
