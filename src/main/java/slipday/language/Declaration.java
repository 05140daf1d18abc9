package slipday.language;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** The words that begin a thing. The lines under it belong to it, until the next such word. */
public enum Declaration {
  SEASON(
      "<season>",
      "The season the plan is for; in the south, where it crosses the new year, both years.",
      "season 2026",
      false),
  INCLUDE(
      "<text:path>",
      "Takes in another file, or every season file of a folder, by name.",
      "include \"record\"",
      false),
  SITE(
      "<name>[ <text:title>]",
      "The garden: where it lies, its weather, and the risk its gardener accepts.",
      "site tern-hollow \"Tern Hollow\"",
      true),
  BED(
      "<name>[ <text:title>]",
      "A bed: its size, where it lies, and what grew in it.",
      "bed long-south",
      true),
  NEIGHBOUR(
      "<name>[ <text:title>]",
      "Somebody else's plants, near enough for their pollen to matter.",
      "neighbour allotments",
      true),
  VOLUNTEER(
      "<name>[ <text:title>]",
      "A plant that came up by itself; it sheds pollen like any other.",
      "volunteer heap-gourd",
      true),
  LINE(
      "<name>[ <text:title>]",
      "A line: plants of one descent, kept or being made. Any fact of its crop can be told anew.",
      "line tern-amber \"Tern Amber\"",
      true),
  LOT("<name>", "Seed in hand, of one harvest and one generation.", "lot tern-amber-f3", true),
  GROW(
      "<lot>[ as <name:as>]",
      "Sets a lot in a bed this season; `as` names a second sowing of the same lot.",
      "grow tern-amber-f3",
      true),
  CROSS(
      "<name>", "A cross to be made by hand between two plantings.", "cross ropewalk-amber", true),
  GOAL("<line>", "What a line is bred for.", "goal tern-amber", true),
  TRAIT(
      "<phrase:name>",
      "A trait of the gardener's own to record, with its scale or its unit.",
      "trait net density",
      true),
  ALLOW(
      "<rule>",
      "Accepts one finding of a rule at one place, with the reason.",
      "allow same-family-again",
      true),
  SOURCE(
      "<name> <text:title>",
      "A publication that facts are taken from.",
      "source own-notes \"The gardener's notebook, 2019 to 2025\"",
      false),
  SPECIES(
      "<name> <text:latin>",
      "A species: who crosses with whom, and the facts its crops share.",
      "species melon \"Cucumis melo\"",
      true),
  CROP(
      "<name>[ <text:title>]",
      "A crop or market type of a species, with the facts in which it differs.",
      "crop muskmelon",
      true);

  private static final Map<String, Declaration> BY_WORD = new HashMap<>();

  static {
    for (Declaration declaration : values()) {
      BY_WORD.put(declaration.word, declaration);
    }
  }

  private final String word;
  private final Shape head;
  private final String sentence;
  private final String example;
  private final boolean hasClauses;

  Declaration(String head, String sentence, String example, boolean hasClauses) {
    this.word = name().toLowerCase(Locale.ROOT);
    this.head = Shape.of(head);
    this.sentence = sentence;
    this.example = example;
    this.hasClauses = hasClauses;
  }

  public String word() {
    return word;
  }

  public Shape head() {
    return head;
  }

  public String sentence() {
    return sentence;
  }

  public String example() {
    return example;
  }

  public boolean hasClauses() {
    return hasClauses;
  }

  /** The declaration of a word; case does not matter. */
  public static Optional<Declaration> named(String word) {
    Declaration found = BY_WORD.get(word);
    return Optional.ofNullable(found == null ? BY_WORD.get(word.toLowerCase(Locale.ROOT)) : found);
  }

  /** The declaration a line begins, by its first word. */
  public static Optional<Declaration> begunBy(Line line) {
    Word first = line.first();
    return first.is(WordKind.WORD) ? named(first.text()) : Optional.empty();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Declaration::word).toList();
  }
}
