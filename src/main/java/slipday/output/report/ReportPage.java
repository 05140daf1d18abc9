package slipday.output.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import slipday.climate.WeatherYear;
import slipday.finding.Finding;
import slipday.finding.Label;
import slipday.finding.Level;
import slipday.garden.Garden;
import slipday.output.Days;
import slipday.output.Lines;
import slipday.output.Questions;
import slipday.output.report.Template.Raw;
import slipday.season.Season;
import slipday.season.today.DayAtHand;
import slipday.seed.SeedBox;
import slipday.seed.SeedLot;
import slipday.syntax.SeasonFile;

/** The season on one page that needs nothing but itself. */
public final class ReportPage {
  /** Findings of one rule on one line, told one by one. */
  private static final int MOST_ALIKE = 3;

  /**
   * With as many plantings, what is out of sight is not laid out until it comes into it, and
   * reasons are not written out for who has no scripts.
   */
  private static final int LARGE = 100;

  private ReportPage() {}

  /**
   * What the page is about.
   *
   * @param plan its name
   * @param texts plan and record as read, in their order
   * @param asOf the day it is made for
   * @param fixed whether that day stays today's on the page, whenever it is looked at
   * @param breeding of the garden as of that day; asked for last
   */
  public record Subject(
      String plan,
      Season season,
      List<Finding> findings,
      List<SeasonFile> texts,
      LocalDate asOf,
      boolean fixed,
      Supplier<Breeding> breeding) {}

  /** What the template is filled in with. */
  record View(
      String policy,
      Raw style,
      Raw script,
      Raw data,
      Raw written,
      String title,
      String season,
      String plan,
      String model,
      String asOf,
      String live,
      boolean large,
      String first,
      String last,
      SeasonView calendar,
      GardenView garden,
      WantedView work,
      CandidatesSection candidates,
      GenerationsSection generations,
      List<SeedView> seed,
      DescentView descent,
      String found,
      List<FindingView> findings,
      List<PlanText.FileView> texts) {}

  /**
   * Loads what a page with a record takes longest to load.
   *
   * @return a figure of no meaning
   */
  public static double makeReady() {
    return Layers.makeReady();
  }

  /** The page, HTML. */
  public static String html(Subject subject) {
    return Template.fill("report.html", view(subject));
  }

  private static View view(Subject subject) {
    Season season = DayAtHand.asOf(subject.season(), subject.asOf());
    Garden garden = season.garden();
    Axis axis = Axis.of(season);
    Days days = new Days(garden.season().first(), garden.season().last());
    WhyBook book = new WhyBook(subject.texts());
    Ids ids = new Ids();
    Reach reach = new Reach(season.exposures());
    Questions questions =
        Questions.of(garden, Optional.of(season), subject.findings(), reach.told());
    new Things(book, ids, questions, axis, days, reach, garden.units()).add(season);
    List<SeedLot> lots = SeedBox.lots(garden, OptionalInt.empty());
    List<FindingView> findings = findings(subject.findings(), book);
    List<String> years = season.climate().usableYears().stream().map(WeatherYear::label).toList();
    Raw style = new Raw(Template.read("report.css") + Template.read("plots.css"));
    Raw script = new Raw(Template.read("report.js") + Template.read("plots.js"));
    GardenView ground = GardenView.of(season, ids, book);
    List<SeedView> seed = SeedView.of(lots, ids, book);
    DescentView descent = DescentView.of(garden, lots, ids, book);
    SeasonView calendar = SeasonView.of(season, reach, ids, Optional.of(subject.asOf()));
    WantedView work = WantedView.of(season, subject.asOf(), axis, ids, days);
    Breeding breeding = subject.breeding().get();
    CandidatesSection candidates = CandidatesSection.of(garden, breeding, book);
    GenerationsSection generations = GenerationsSection.of(garden, breeding, book);
    boolean large = garden.plantings().size() >= LARGE;
    return new View(
        Template.policy(style, Optional.of(script)),
        style,
        script,
        new Raw(book.embedded(years, axis.days())),
        new Raw(large ? "" : book.written()),
        garden.site().title(),
        garden.season().label(),
        subject.plan(),
        model(years.size()),
        days.day(subject.asOf()),
        subject.fixed() ? "no" : "yes",
        large,
        axis.first().toString(),
        axis.last().toString(),
        calendar,
        ground,
        work,
        candidates,
        generations,
        seed,
        descent,
        found(subject.findings()),
        findings,
        PlanText.of(subject.texts(), subject.findings(), book));
  }

  private static String model(int years) {
    return years > 0
        ? "Every planting is walked through " + Lines.count(years, "weather year") + "."
        : "Reckoned in calendar days from what the plan tells of frost; there is no weather year.";
  }

  private static List<FindingView> findings(List<Finding> findings, WhyBook book) {
    List<FindingView> views = new ArrayList<>();
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort(
        Comparator.comparing((Finding f) -> f.allowed().isPresent())
            .thenComparing(Finding::level, Comparator.reverseOrder()));
    for (List<Finding> alike : alike(sorted)) {
      int told = alike.size() <= MOST_ALIKE + 1 ? alike.size() : MOST_ALIKE;
      for (Finding f : alike.subList(0, told)) {
        views.add(finding(f, "fi" + views.size(), book));
      }
      if (told < alike.size()) {
        FindingView last = views.remove(views.size() - 1);
        views.add(last.andMore(alike.size() - told));
      }
    }
    return views;
  }

  /** Those of one rule on one line together, each where the first of them stands. */
  private static Collection<List<Finding>> alike(List<Finding> findings) {
    Map<List<Object>, List<Finding>> alike = new LinkedHashMap<>();
    for (Finding f : findings) {
      List<Object> key = List.of(f.rule(), f.level(), f.place().map(Label::span), f.allowed());
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(f);
    }
    return alike.values();
  }

  private static FindingView finding(Finding f, String free, WhyBook book) {
    String id = f.because().isEmpty() ? "" : free;
    if (!id.isEmpty()) {
      String line = f.place().map(p -> book.line(p.span())).orElse("");
      WhyBook.Item item = book.item("rests on", "", f.because());
      book.thing(id, new WhyBook.Thing(f.rule(), Lines.clean(f.message()), line, List.of(item)));
    }
    return FindingView.of(f, id, book);
  }

  private static String found(List<Finding> findings) {
    List<String> counts = new ArrayList<>();
    for (Level level : List.of(Level.ERROR, Level.WARNING, Level.NOTE)) {
      long n = findings.stream().filter(f -> f.level() == level && f.allowed().isEmpty()).count();
      if (n > 0) {
        counts.add(Lines.count(n, level.word()));
      }
    }
    return counts.isEmpty()
        ? "Nothing is held against this plan."
        : String.join(", ", counts) + ".";
  }
}
