package slipday.app;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Label;
import slipday.finding.Level;
import slipday.finding.Outcome;
import slipday.format.Formatter;
import slipday.garden.Garden;
import slipday.language.Binder;
import slipday.language.BoundFile;
import slipday.language.Entry;
import slipday.rules.RuleCatalog;
import slipday.rules.record.GenerationDoesNotFollow;
import slipday.source.Source;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;

/**
 * What the record's files would be with some lines added, and what keeps a line from being added.
 * Nothing is written here.
 */
public final class RecordBook {
  private static final Pattern SOWED =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2}\\s+sowed\\s+)([^\\s,]+)(\\s*(?:,.*)?)");

  private final Path plan;
  private final String name;
  private final boolean includesOutside;
  private final LocalDate lastDay;

  /**
   * @param name the plan as its user calls it
   * @param lastDay the last day that can have been; what is dated later has yet to happen
   */
  public RecordBook(Path plan, String name, boolean includesOutside, LocalDate lastDay) {
    this.plan = plan.toAbsolutePath().normalize();
    this.name = name;
    this.includesOutside = includesOutside;
    this.lastDay = lastDay;
  }

  /**
   * A line to add.
   *
   * @param from where it comes from, such as {@code line 4}; empty where it was typed
   */
  public record Wish(String from, String text) {}

  /** A line that can't be added, and why. */
  public record Refusal(Wish wish, Finding finding) {}

  /**
   * @param texts the files as they would be, by path; none where nothing is added
   * @param added lines that are new
   * @param known lines that the record has already
   * @param heed what the rules find at the new lines: told, and no ground for refusal
   */
  public record Addition(
      Map<Path, String> texts,
      List<String> added,
      List<String> known,
      List<Refusal> refused,
      List<Finding> heed) {}

  private record Texts(Map<Path, String> texts, List<Finding> heed) {
    private static final Texts NONE = new Texts(Map.of(), List.of());
  }

  /** The folder the record lies in, beside the plan. */
  public Path folder() {
    return Loader.recordFolder(plan);
  }

  private static final class New {
    private final Wish wish;
    private final Entry entry;
    private final String line;

    New(Wish wish, Entry entry, String line) {
      this.wish = wish;
      this.entry = entry;
      this.line = line;
    }
  }

  /**
   * @param before the plan as it is
   */
  public Addition add(Checked before, List<Wish> wishes) {
    List<Refusal> refused = new ArrayList<>();
    List<String> known = new ArrayList<>();
    List<New> fresh = new ArrayList<>();
    Set<String> wordings = new HashSet<>();
    before.files().stream()
        .flatMap(f -> Binder.bind(f).value().entries().stream())
        .forEach(e -> wordings.add(e.wording()));
    for (Wish wish : wishes) {
      read(complete(before, wish), refused)
          .ifPresent(
              n -> {
                if (wordings.add(n.entry.wording())) {
                  fresh.add(n);
                } else {
                  known.add(n.line);
                }
              });
    }
    Texts texts = texts(before, fresh, refused);
    Map<Wish, Integer> places = new HashMap<>();
    wishes.forEach(w -> places.putIfAbsent(w, places.size()));
    refused.sort(Comparator.comparingInt(r -> places.getOrDefault(r.wish, 0)));
    List<String> added = fresh.stream().map(n -> n.line).toList();
    return new Addition(texts.texts, added, known, refused, texts.heed);
  }

  /** A sowing names its lot, so that the record can be read beside the plans of other years. */
  private static Wish complete(Checked before, Wish wish) {
    Matcher sowed = SOWED.matcher(wish.text().strip());
    if (!sowed.matches() || before.garden().isEmpty()) {
      return wish;
    }
    Garden garden = before.garden().get();
    String name = sowed.group(2);
    boolean isLot = garden.lots().stream().anyMatch(l -> l.name().equals(name));
    return garden
        .planting(name)
        .filter(p -> !isLot)
        .map(
            p ->
                new Wish(
                    wish.from(), sowed.group(1) + p.lot().name() + " as " + name + sowed.group(3)))
        .orElse(wish);
  }

  private Optional<New> read(Wish wish, List<Refusal> refused) {
    Outcome<SeasonFile> parsed = SeasonParser.parse(Source.of("entry", wish.text()));
    Outcome<BoundFile> bound = parsed.then(Binder::bind);
    List<Entry> entries = bound.value().entries();
    boolean hides = !wish.from().isEmpty() && !parsed.value().comments().isEmpty();
    boolean oneLine = entries.size() == 1 && parsed.value().lines().size() == 1 && !hides;
    if (!bound.findings().isEmpty() || !oneLine) {
      Finding first =
          bound.findings().stream().findFirst().orElseGet(() -> notOneLine(parsed.value()));
      refused.add(new Refusal(wish, first));
      return Optional.empty();
    }
    Entry entry = entries.get(0);
    if (entry.date().isAfter(lastDay)) {
      refused.add(
          new Refusal(
              wish,
              Finding.placeless(
                      "date-outside-season", Level.ERROR, "`" + entry.date() + "` has yet to come.")
                  .withHelp("The record is of what has been; what is meant stands in the plan.")));
      return Optional.empty();
    }
    return Optional.of(new New(wish, entry, Formatter.format(parsed.value()).value().strip()));
  }

  private static Finding notOneLine(SeasonFile file) {
    String what =
        file.lines().isEmpty()
            ? "Nothing is recorded here."
            : "This is not one line of the record.";
    return Finding.placeless("clause-shape", Level.ERROR, what)
        .withHelp("Write one fact, such as `2026-07-15 took 3A`.");
  }

  /** The files with what can stand in them; what can't is taken out and refused. */
  private Texts texts(Checked before, List<New> fresh, List<Refusal> refused) {
    while (!fresh.isEmpty()) {
      Map<Path, String> texts = new TreeMap<>();
      Map<String, New> places = new HashMap<>();
      for (New each : fresh) {
        Optional<Finding> unread = append(each, texts, places);
        if (unread.isPresent()) {
          fresh.forEach(n -> refused.add(new Refusal(n.wish, unread.get())));
          fresh.clear();
          return Texts.NONE;
        }
      }
      Checked after =
          new Pipeline(FileTexts.withOverlays(texts), includesOutside, lastDay).check(plan, name);
      List<Refusal> wrong = wrong(before, after, fresh, places);
      if (wrong.isEmpty()) {
        return new Texts(texts, heed(before, after, places));
      }
      refused.addAll(wrong);
      wrong.forEach(r -> fresh.removeIf(n -> n.wish.equals(r.wish)));
    }
    return Texts.NONE;
  }

  /** Why the file the line belongs in can't be read, so that nothing may be written over it. */
  private Optional<Finding> append(New each, Map<Path, String> texts, Map<String, New> places) {
    Path file = folder().resolve(each.entry.date().getYear() + ".season");
    if (!texts.containsKey(file)) {
      boolean begun = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
      Outcome<Optional<Source>> read =
          begun
              ? FileTexts.onDisk().read(file, "record/" + file.getFileName())
              : Outcome.of(Optional.empty());
      if (begun && read.value().isEmpty()) {
        return read.findings().stream().findFirst();
      }
      texts.put(file, read.value().map(Source::text).orElse(""));
    }
    String text = texts.getOrDefault(file, "");
    String whole = text.isEmpty() || text.endsWith("\n") ? text : text + "\n";
    texts.put(file, whole + each.line + "\n");
    int line = (int) whole.chars().filter(c -> c == '\n').count() + 1;
    places.put("record/" + file.getFileName() + ":" + line, each);
    return Optional.empty();
  }

  /** What is found at the new lines and was not found before, worth a second look now. */
  private static List<Finding> heed(Checked before, Checked after, Map<String, New> places) {
    Set<String> old = new HashSet<>();
    before.findings().forEach(f -> old.add(f.rule() + f.message()));
    return after.findings().stream()
        .filter(f -> f.level() != Level.NOTE && f.allowed().isEmpty())
        .filter(f -> !old.contains(f.rule() + f.message()) && culprit(f, places).isPresent())
        .toList();
  }

  private List<Refusal> wrong(
      Checked before, Checked after, List<New> fresh, Map<String, New> places) {
    Set<String> old = new HashSet<>();
    mistakes(before).forEach(f -> old.add(f.rule() + f.message()));
    List<Refusal> wrong = new ArrayList<>();
    for (Finding finding : mistakes(after).toList()) {
      if (old.contains(finding.rule() + finding.message())) {
        continue;
      }
      New culprit = culprit(finding, places).orElse(fresh.get(0));
      if (wrong.stream().noneMatch(r -> r.wish.equals(culprit.wish))) {
        wrong.add(new Refusal(culprit.wish, finding));
      }
    }
    if (wrong.isEmpty() && !isIncluded(after, fresh)) {
      Finding outside =
          Finding.placeless("include-missing", Level.ERROR, "The plan does not take in its record.")
              .withHelp("Add the line `include \"record\"` to the plan.");
      fresh.forEach(n -> wrong.add(new Refusal(n.wish, outside)));
    }
    return wrong;
  }

  /**
   * Only what makes no sense is refused, a label that can't be right too; a fact that breaks a rule
   * of the trade is still one.
   */
  private static Stream<Finding> mistakes(Checked checked) {
    return checked.findings().stream()
        .filter(f -> f.level() == Level.ERROR && f.allowed().isEmpty())
        .filter(
            f ->
                RuleCatalog.mistakes().contains(f.rule())
                    || f.rule().equals(GenerationDoesNotFollow.ID));
  }

  private static Optional<New> culprit(Finding finding, Map<String, New> places) {
    return Stream.concat(finding.place().stream(), finding.others().stream())
        .map(Label::span)
        .flatMap(
            span ->
                places.entrySet().stream()
                    .filter(p -> (span.source().name() + ":" + span.line()).endsWith(p.getKey()))
                    .map(Map.Entry::getValue))
        .findFirst();
  }

  private static boolean isIncluded(Checked after, List<New> fresh) {
    Set<String> all = new HashSet<>();
    after.files().stream()
        .flatMap(f -> Binder.bind(f).value().entries().stream())
        .forEach(e -> all.add(e.wording()));
    return fresh.stream().allMatch(n -> all.contains(n.entry.wording()));
  }
}
