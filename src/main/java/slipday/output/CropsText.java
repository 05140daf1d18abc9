package slipday.output;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slipday.output.data.CropsData;
import slipday.output.data.CropsData.EntryData;
import slipday.output.data.CropsData.FactData;
import slipday.output.data.CropsData.OtherNameData;

/** The crops known and their facts, for people. */
public final class CropsText {
  private static final int CLAUSE_WIDTH = 14;

  private final Ink ink;
  private final CropsData data;

  public CropsText(CropsData data, Ink ink) {
    this.data = data;
    this.ink = ink;
  }

  public String text() {
    return data.species().isEmpty()
        ? data.entries().stream().map(this::entry).collect(Collectors.joining("\n"))
        : list();
  }

  private String list() {
    StringBuilder out = new StringBuilder();
    for (CropsData.SpeciesData s : data.species()) {
      out.append(ink.strong(s.name())).append(" (").append(s.latin()).append(")\n");
      out.append(Lines.hung("  ", listed(s)));
    }
    return out.append("\nThe facts of one, with their sources: slipday crops NAME\n").toString();
  }

  /** Its crops, each with the words that may stand in its place. */
  private static String listed(CropsData.SpeciesData species) {
    List<String> crops = new ArrayList<>();
    for (String crop : species.crops()) {
      List<String> words = new ArrayList<>();
      for (OtherNameData other : species.otherNames()) {
        if (other.crop().equals(crop) && other.alone()) {
          words.add(other.name());
        }
      }
      crops.add(words.isEmpty() ? crop : crop + " (" + String.join(", ", words) + ")");
    }
    return String.join(", ", crops);
  }

  private static String told(OtherNameData other) {
    return other.alone()
        ? other.name()
        : other.where().isEmpty()
            ? other.name() + " (as others are)"
            : other.name() + " (in " + other.where() + ")";
  }

  private String entry(EntryData e) {
    StringBuilder out = new StringBuilder();
    String what = e.kind().equals("crop") ? ", of " + e.species() + " (" : " (";
    out.append(ink.strong(e.name())).append(what).append(e.latin()).append(")\n");
    if (!e.otherNames().isEmpty()) {
      List<String> others = e.otherNames().stream().map(CropsText::told).toList();
      out.append(Lines.hung("Also called ", String.join(", ", others) + "."));
    }
    List<String> sources = new ArrayList<>();
    String owner = "";
    for (FactData fact : e.facts()) {
      if (!fact.owner().equals(owner)) {
        owner = fact.owner();
        out.append("\n").append(ink.strong("As " + owner + " has it")).append('\n');
      }
      String words = fact.words();
      String rest = words.substring(Math.min(words.length(), fact.clause().length())).strip();
      String lead = "  " + Lines.padded(fact.clause(), CLAUSE_WIDTH) + " ";
      String text = rest + "  " + mark(fact, sources);
      String hang = " ".repeat(CLAUSE_WIDTH + 3);
      out.append(String.join("\n", Lines.wrapped(lead, hang, text))).append('\n');
    }
    if (!sources.isEmpty()) {
      out.append('\n').append(ink.strong("Sources")).append('\n');
      for (int i = 0; i < sources.size(); i++) {
        out.append(Lines.hung("  [" + (i + 1) + "] ", sources.get(i)));
      }
    }
    return out.toString();
  }

  private static String mark(FactData fact, List<String> sources) {
    return switch (fact.basis()) {
      case "plan" -> "[" + fact.place().file() + ":" + fact.place().line() + "]";
      case "common-practice" -> "[common practice]";
      case "from-memory" -> "[" + number(fact, sources) + ", from memory]";
      default -> "[" + number(fact, sources) + "]";
    };
  }

  private static int number(FactData fact, List<String> sources) {
    if (!sources.contains(fact.source())) {
      sources.add(fact.source());
    }
    return sources.indexOf(fact.source()) + 1;
  }
}
