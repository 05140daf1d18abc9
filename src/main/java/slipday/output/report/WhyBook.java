package slipday.output.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import slipday.measure.Reason;
import slipday.output.Lines;
import slipday.source.Span;
import slipday.syntax.SeasonFile;

/**
 * What a page can be asked: things, what is known of each, and the reasons, each kept once however
 * often it is rested on.
 */
final class WhyBook {
  private final Map<String, Integer> files = new HashMap<>();
  private final Map<String, Thing> things = new java.util.LinkedHashMap<>();
  private final List<Node> reasons = new ArrayList<>();
  private final IdentityHashMap<Reason, Integer> seen = new IdentityHashMap<>();
  private final Map<Node, Integer> numbers = new HashMap<>();
  private final boolean shortNames;
  private final Set<String> cited = new TreeSet<>();

  WhyBook(List<SeasonFile> texts) {
    texts.forEach(f -> files.putIfAbsent(f.source().name(), files.size()));
    Set<String> bare = new HashSet<>();
    shortNames = files.keySet().stream().allMatch(name -> bare.add(bare(name)));
  }

  private static String bare(String name) {
    return name.substring(name.lastIndexOf('/') + 1);
  }

  /** File and line as people call them; without the folder, where the names differ all the same. */
  String label(Span span) {
    boolean ours = shortNames && files.containsKey(span.source().name());
    String label = span.lineLabel();
    return Lines.clean(ours ? bare(label) : label);
  }

  /**
   * Something that can be pointed at.
   *
   * @param line the line that declares it, {@code 0-12}; may be empty
   */
  record Thing(String title, String under, String line, List<Item> items) {}

  /**
   * Something known of it.
   *
   * @param at where its usual day lies on the axis, in thousandths; −1 where it has none
   * @param because numbers of reasons
   * @param years its day in each weather year, counted on the axis; −1 where it does not come
   */
  record Item(String topic, String answer, int at, List<Integer> because, List<Integer> years) {}

  /** Something known of a thing that has no day. */
  Item item(String topic, String answer, List<Reason> because) {
    return item(topic, answer, -1, because, List.of());
  }

  /**
   * @param at as of an {@link Item}
   * @param years as of an {@link Item}
   */
  Item item(String topic, String answer, int at, List<Reason> because, List<Integer> years) {
    return new Item(Lines.clean(topic), Lines.clean(answer), at, reasons(because), years);
  }

  /**
   * A reason.
   *
   * @param line of the plan or record, {@code 0-12}; empty where it is none of theirs
   * @param place what to call that line, or the file that ships with the tool
   */
  record Node(String says, String basis, String line, String place, List<Integer> from) {}

  /** Adds a reason with all beneath it, and gives its number. */
  int reason(Reason reason) {
    Integer known = seen.get(reason);
    if (known != null) {
      return known;
    }
    List<Integer> from = reasons(reason.from());
    Node node =
        new Node(
            Lines.clean(reason.says()),
            reason.basis().word(),
            reason.place().map(this::line).orElse(""),
            reason.place().map(this::label).orElse(""),
            from);
    int number =
        numbers.computeIfAbsent(
            node,
            n -> {
              reasons.add(n);
              return reasons.size() - 1;
            });
    seen.put(reason, number);
    return number;
  }

  List<Integer> reasons(List<Reason> several) {
    return several.stream().map(this::reason).distinct().toList();
  }

  void thing(String id, Thing thing) {
    things.put(id, thing);
  }

  /** The id of a line in a text of the user's, {@code 0-12}; empty for any other. */
  String line(Span span) {
    Integer file = files.get(span.source().name());
    if (file == null || span.source().isBuiltIn()) {
      return "";
    }
    String line = file + "-" + span.line();
    cited.add(line);
    return line;
  }

  /** Whether something shown rests on a line. */
  boolean isCited(String line) {
    return cited.contains(line);
  }

  /**
   * All of it as the page's script reads it: JSON on one line, safe inside a page, for nothing in
   * it can end the element it stands in. Written piece by piece, since having the pieces looked
   * through and bound takes longer than all the writing.
   */
  String embedded(List<String> years, int days) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.writeStartObject();
      json.writeObjectFieldStart("things");
      for (Map.Entry<String, Thing> thing : things.entrySet()) {
        json.writeFieldName(thing.getKey());
        write(thing.getValue(), json);
      }
      json.writeEndObject();
      json.writeArrayFieldStart("reasons");
      for (Node node : reasons) {
        strings(json, node.says(), node.basis(), node.line(), node.place());
        numbers(json, node.from());
        json.writeEndArray();
      }
      json.writeEndArray();
      json.writeFieldName("years");
      strings(json, years.toArray(String[]::new));
      json.writeEndArray();
      json.writeNumberField("days", days);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString().replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026");
  }

  /**
   * All of it as a list, for who has no scripts: things with what is known of them, and after them
   * the reasons by their numbers.
   */
  String written() {
    StringBuilder out = new StringBuilder();
    things.forEach((id, thing) -> write(id, thing, out));
    out.append("<h3>By number</h3><ol start=\"0\">");
    for (int i = 0; i < reasons.size(); i++) {
      Node node = reasons.get(i);
      out.append("<li id=r").append(i).append('>').append(Words.marked(node.says()));
      if (!node.line().isEmpty()) {
        out.append(' ').append(toLine(node.line(), node.place()));
      } else if (!node.place().isEmpty()) {
        out.append(" (").append(Template.escaped(node.place())).append(')');
      }
      numbers(node.from(), "; from:", out);
    }
    return out.append("</ol>").toString();
  }

  private static void write(String id, Thing thing, StringBuilder out) {
    out.append("<h3 id=\"w-").append(id).append("\">").append(Template.escaped(thing.title()));
    out.append("</h3><p>").append(Words.marked(thing.under()));
    out.append(thing.line().isEmpty() ? "" : " " + toLine(thing.line(), "in the plan"));
    out.append("</p><ul>");
    for (Item item : thing.items()) {
      out.append("<li><b>").append(Template.escaped(item.topic())).append("</b>");
      out.append(item.answer().isEmpty() ? "" : ": " + Words.marked(item.answer()));
      numbers(item.because(), "; why:", out);
    }
    out.append("</ul>\n");
  }

  private static String toLine(String line, String label) {
    return "<a href=\"#L" + line + "\">" + Template.escaped(label) + "</a>";
  }

  private static void numbers(List<Integer> each, String lead, StringBuilder out) {
    out.append(each.isEmpty() ? "" : lead);
    each.forEach(n -> out.append(" <a href=#r" + n + ">" + n + "</a>"));
  }

  private static void write(Thing thing, JsonGenerator json) throws IOException {
    strings(json, thing.title(), thing.under(), thing.line());
    json.writeStartArray();
    for (Item item : thing.items()) {
      strings(json, item.topic(), item.answer());
      json.writeNumber(item.at());
      numbers(json, item.because());
      numbers(json, item.years());
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeEndArray();
  }

  /** Begins an array with these, and leaves it open. */
  private static void strings(JsonGenerator json, String... each) throws IOException {
    json.writeStartArray();
    for (String one : each) {
      json.writeString(one);
    }
  }

  private static void numbers(JsonGenerator json, List<Integer> each) throws IOException {
    json.writeStartArray();
    for (int one : each) {
      json.writeNumber(one);
    }
    json.writeEndArray();
  }
}
