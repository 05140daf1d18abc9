package slipday.output.report;

import com.fasterxml.jackson.annotation.JsonFormat;
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
  @JsonFormat(shape = JsonFormat.Shape.ARRAY)
  record Thing(String title, String under, String line, List<Item> items) {}

  /**
   * Something known of it.
   *
   * @param at where its usual day lies on the axis, in thousandths; −1 where it has none
   * @param because numbers of reasons
   * @param years its day in each weather year, counted on the axis; −1 where it does not come
   */
  @JsonFormat(shape = JsonFormat.Shape.ARRAY)
  record Item(String topic, String answer, int at, List<Integer> because, List<Integer> years) {}

  /**
   * A reason.
   *
   * @param line of the plan or record, {@code 0-12}; empty where it is none of theirs
   * @param place what to call that line, or the file that ships with the tool
   */
  @JsonFormat(shape = JsonFormat.Shape.ARRAY)
  record Node(String says, String basis, String line, String place, List<Integer> from) {}

  /** All of it, as the page's script reads it. */
  record Data(Map<String, Thing> things, List<Node> reasons, List<String> years, int days) {}

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

  Data data(List<String> years, int days) {
    return new Data(things, reasons, years, days);
  }
}
