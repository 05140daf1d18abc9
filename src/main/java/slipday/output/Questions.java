package slipday.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import slipday.climate.Climate;
import slipday.climate.WeatherYear;
import slipday.finding.Finding;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Named;
import slipday.garden.record.Asides;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.output.Question.YearDay;
import slipday.output.data.EventData;
import slipday.season.Apart;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.Exposure;
import slipday.season.MarkedFruit;
import slipday.season.Nicking;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;
import slipday.season.Season;
import slipday.season.Traces;

/** Everything about a plan that can be asked "why". */
public final class Questions {
  /** What tables call an event, for those who ask by a heading. */
  private static final Map<Event, Set<String>> SHOWN_AS =
      Map.of(
          Event.FIRST_MALE, Set.of("males"),
          Event.FIRST_FRUITING, Set.of("flowers", "fruiting"),
          Event.LAST_SET, Set.of("set-until", "pollinate-until"),
          Event.BLOOM_ENDS, Set.of("ends"),
          Event.SEED_RIPE, Set.of("seed"));

  private final List<Question> all = new ArrayList<>();
  private final Set<String> subjects = new LinkedHashSet<>();
  private final Map<String, List<Question>> bySubject = new HashMap<>();

  private Questions() {}

  /**
   * @param season empty where mistakes keep it from being reckoned: then only findings are asked
   */
  public static Questions of(Garden garden, Optional<Season> season, List<Finding> findings) {
    List<Exposure> exposures = season.map(Season::exposures).orElse(List.of());
    return of(garden, season, findings, exposures);
  }

  /**
   * @param exposures those that can be asked about: of a large garden there are too many for one
   *     who tells of a few
   */
  public static Questions of(
      Garden garden, Optional<Season> season, List<Finding> findings, List<Exposure> exposures) {
    Questions questions = new Questions();
    questions.name(garden);
    season.ifPresent(s -> questions.season(s, exposures));
    questions.findings(findings);
    questions.fruits(garden);
    questions.notes(garden);
    for (Question q : questions.all) {
      questions.bySubject.computeIfAbsent(q.subject(), s -> new ArrayList<>()).add(q);
    }
    return questions;
  }

  private void name(Garden garden) {
    garden.plantings().forEach(this::name);
    garden.crosses().forEach(this::name);
    garden.beds().forEach(this::name);
    garden.lots().forEach(this::lot);
    garden.lines().forEach(this::name);
    garden.outsiders().forEach(this::name);
    name(garden.site());
  }

  /** What became of each tagged flower of the season, by the lines that tell. */
  private void fruits(Garden garden) {
    for (FruitStory story : FruitStory.all(garden.record())) {
      Fruit fruit = story.fruit();
      if (fruit.year() == garden.season().year()) {
        subjects.add(fruit.tag());
        List<Reason> lines =
            Stream.of(
                    Stream.of((Fact) fruit),
                    story.checked().stream(),
                    story.picked().stream(),
                    story.saved().stream(),
                    story.spoilt().stream())
                .flatMap(s -> s)
                .map(f -> f.at().reason())
                .distinct()
                .toList();
        all.add(Question.of(fruit.tag(), "record", words(story.state()), lines));
      }
    }
  }

  private static String words(FruitStory.State state) {
    return switch (state) {
      case PENDING -> "pollinated; whether it took is not recorded";
      case SET -> "it took";
      case FAILED -> "it dropped";
      case LOST -> "out of the seed";
      case PICKED -> "picked";
      case SAVED -> "its seed is saved";
    };
  }

  /** Notes and photos by the things they are of; those of the day alone are the site's. */
  private void notes(Garden garden) {
    Map<String, List<Asides.Aside>> byThing = new LinkedHashMap<>();
    for (Asides.Aside aside : new Asides(garden.record()).all()) {
      List<String> things =
          aside.things().isEmpty() ? List.of(garden.site().name()) : aside.things();
      things.forEach(t -> byThing.computeIfAbsent(t, k -> new ArrayList<>()).add(aside));
    }
    byThing.forEach(
        (thing, asides) -> {
          subjects.add(thing);
          List<Reason> lines = asides.stream().map(Asides.Aside::reason).toList();
          all.add(
              Question.of(thing, "notes", counted(asides), lines).orAs(Set.of("note", "photos")));
        });
  }

  /** How many notes and photos there are, in words. */
  public static String counted(List<Asides.Aside> asides) {
    int notes = (int) asides.stream().filter(a -> a.text().isPresent()).count();
    int photos = asides.size() - notes;
    return photos == 0
        ? Lines.count(notes, "note")
        : (notes == 0 ? "" : Lines.count(notes, "note") + ", ") + Lines.count(photos, "photo");
  }

  private void lot(Lot lot) {
    name(lot);
    lot.isolated()
        .ifPresent(
            r ->
                all.add(
                    Question.of(lot.name(), "isolation", "kept from other pollen", List.of(r))));
  }

  private void name(Named thing) {
    subjects.add(thing.name());
  }

  private void season(Season season, List<Exposure> exposures) {
    Days days = new Days(season.garden().season().first(), season.garden().season().last());
    for (PlantingSeason p : season.plantings()) {
      planting(p, season.climate(), days);
    }
    exposures.stream()
        .collect(
            java.util.stream.Collectors.groupingBy(
                e -> List.of(e.receiver().name(), e.source().name()),
                LinkedHashMap::new,
                java.util.stream.Collectors.toList()))
        .values()
        .forEach(this::exposure);
    season.nickings().forEach(this::nicking);
    season.apart().forEach(this::apart);
    season.pollinations().forEach(this::pollination);
    season.fruits().stream().filter(MarkedFruit::hangs).forEach(f -> fruit(f, days));
    climate(season);
  }

  private void planting(PlantingSeason p, Climate climate, Days days) {
    for (Map.Entry<Event, Reasoned<DateSpread>> date : p.dates().entrySet()) {
      Event event = date.getKey();
      DateSpread spread = date.getValue().value();
      Question question =
          Question.of(
              p.name(), event.id(), answer(spread, days), List.of(date.getValue().reason()));
      Set<String> aliases = new HashSet<>(SHOWN_AS.getOrDefault(event, Set.of()));
      aliases.add(hyphened(event.words()));
      aliases.add(hyphened(EventData.words(p.planting(), event)));
      all.add(question.orAs(aliases).in(years(p, event, spread, climate)));
    }
    p.ownDays()
        .forEach(
            (event, own) -> {
              Range range = own.value();
              String answer =
                  Math.round(range.middle())
                      + " days ("
                      + Math.round(range.low())
                      + " to "
                      + Math.round(range.high())
                      + ")";
              all.add(
                  Question.of(p.name(), "days-to-" + event.id(), answer, List.of(own.reason())));
            });
    p.choice()
        .chanceReasons()
        .forEach(
            (condition, reason) ->
                all.add(
                    Question.of(
                            p.name(),
                            hyphened(condition.name()),
                            reason.says(),
                            List.of(reason, p.choice().reason()))
                        .orAs(Set.of(hyphened(condition.words())))));
  }

  private void fruit(MarkedFruit fruit, Days days) {
    subjects.add(fruit.tag());
    String answer = answer(fruit.expected().value(), days);
    all.add(
        Question.of(fruit.tag(), fruit.ripens().id(), answer, List.of(fruit.expected().reason())));
  }

  private static String answer(DateSpread spread, Days days) {
    String usual = days.day(spread.usual());
    return spread.decided()
        ? usual
        : usual + " (" + days.day(spread.early()) + " to " + days.day(spread.late()) + ")";
  }

  private static List<YearDay> years(
      PlantingSeason p, Event event, DateSpread spread, Climate climate) {
    List<WeatherYear> years = climate.usableYears();
    if (spread.decided() || years.size() != p.traces().years()) {
      return List.of();
    }
    return IntStream.range(0, years.size())
        .mapToObj(
            year ->
                new YearDay(
                    years.get(year).label(),
                    day(p.traces().slot(event, year * Traces.PACES + 1), climate)))
        .toList();
  }

  private static Optional<LocalDate> day(int slot, Climate climate) {
    return slot == Traces.NEVER ? Optional.empty() : Optional.of(climate.axis().dateOf(slot));
  }

  /** All exposures of one planting to one source; a neighbour may grow several crops. */
  private void exposure(List<Exposure> several) {
    Exposure first = several.get(0);
    String danger = several.stream().anyMatch(Exposure::intoSeed) ? "into its seed" : "no danger";
    String chance =
        first.chance().map(c -> "together in " + Lines.percent(c) + " of years, ").orElse("");
    all.add(
        Question.of(
                first.receiver().name(),
                "pollen-of-" + first.source().name(),
                chance + danger,
                several.stream().map(Exposure::reason).toList())
            .orAs(Set.of(first.source().name())));
  }

  private void nicking(Nicking n) {
    all.add(
        Question.of(
            n.cross().name(),
            "nicking",
            Lines.count(n.mornings().usual(), "morning") + " together",
            List.of(n.reason())));
  }

  private void apart(Apart a) {
    all.add(
        Question.of(
            a.asking().name(),
            "apart-from-" + a.other().name(),
            a.honoured() ? "apart" : "not apart",
            List.of(a.reason())));
  }

  private void pollination(PollinationPlan p) {
    all.add(
        Question.of(p.subject(), "flowers-wanted", p.reason().says(), List.of(p.reason()))
            .orAs(Set.of("hand-pollination", "pollinate")));
    String take = Lines.percent(p.take().value());
    all.add(Question.of(p.subject(), "take", take, List.of(p.take().reason())));
  }

  private void climate(Season season) {
    String site = season.garden().site().name();
    Climate climate = season.climate();
    climate.lastSpringFrost().ifPresent(law -> frost(site, "last-frost", law.reason()));
    climate.firstAutumnFrost().ifPresent(law -> frost(site, "first-frost", law.reason()));
    frost(site, "frost-risk", season.garden().site().frostRisk().reason());
    if (!climate.reasons().isEmpty()) {
      all.add(Question.of(site, "weather", "", climate.reasons()));
    }
  }

  private void frost(String site, String topic, Reason reason) {
    all.add(Question.of(site, topic, reason.says(), List.of(reason)));
  }

  private void findings(List<Finding> findings) {
    Map<List<String>, List<Finding>> bySubject = new LinkedHashMap<>();
    for (Finding f : findings) {
      bySubject.computeIfAbsent(List.of(f.subject(), f.rule()), k -> new ArrayList<>()).add(f);
    }
    bySubject.forEach((key, found) -> all.add(Question.of(key.get(0), key.get(1), found)));
  }

  /** More that can be asked, of things that may be new. */
  public void add(List<Question> more) {
    for (Question q : more) {
      subjects.add(q.subject());
      all.add(q);
      bySubject.computeIfAbsent(q.subject(), s -> new ArrayList<>()).add(q);
    }
  }

  static String hyphened(String words) {
    return words.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
  }

  /** Every name of a thing that can be asked about. */
  public Set<String> subjects() {
    return subjects;
  }

  /** The thing of a name as somebody types it: the case of a tag does not matter. */
  public Optional<String> subject(String typed) {
    return subjects.contains(typed)
        ? Optional.of(typed)
        : subjects.stream().filter(typed::equalsIgnoreCase).findFirst();
  }

  /** Every rule that found something. */
  public List<String> rules() {
    return all.stream()
        .filter(q -> !q.findings().isEmpty())
        .map(Question::topic)
        .distinct()
        .toList();
  }

  public List<Question> about(String subject) {
    return List.copyOf(bySubject.getOrDefault(subject, List.of()));
  }

  /** What a rule found, whatever it is about. */
  public List<Question> ofRule(String rule) {
    return all.stream().filter(q -> !q.findings().isEmpty() && q.topic().equals(rule)).toList();
  }

  /** The question a topic means: by its name, another word for it, or its beginning. */
  public Optional<Question> find(String subject, String topic) {
    String wanted = hyphened(topic);
    List<Question> about = about(subject);
    Optional<Question> exact =
        about.stream()
            .filter(q -> q.topic().equalsIgnoreCase(wanted) || q.aliases().contains(wanted))
            .findFirst();
    List<Question> begun = about.stream().filter(q -> q.topic().startsWith(wanted)).toList();
    return exact.or(() -> begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty());
  }
}
