package slipday.rules.record;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.finding.Level;
import slipday.finding.Mend;
import slipday.garden.CropFacts;
import slipday.garden.Line;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.garden.record.Stand;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/** What is recorded of a fruit is far from what fruit of its kind weighs, holds or takes. */
public final class UnlikelyFigure implements Rule {
  /** A fruit that hung twice as long as any of its kind needs was picked on another day. */
  private static final int TOO_LONG = 2;

  /** So many fruits of other years, about as far out, and the line is known for it. */
  private static final int KNOWN_FOR_IT = 2;

  private static final double ABOUT_AS_FAR = 1.5;

  @Override
  public String id() {
    return "unlikely-figure";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    if (!season.garden().record().isEmpty()) {
      new Judge(season, reporter).run();
    }
  }

  /** Judges the record of one season and those before. */
  private static final class Judge {
    private final Season season;
    private final Reporter reporter;
    private final List<SeenFigure> seen;
    private final Map<Likely.Sort, Map<String, Optional<Likely>>> likely = new HashMap<>();
    private final Set<Fruit.Key> unripe = new HashSet<>();

    Judge(Season season, Reporter reporter) {
      this.season = season;
      this.reporter = reporter;
      this.seen = SeenFigure.all(season.garden().record());
    }

    void run() {
      for (Fact fact : season.garden().record().facts()) {
        if (fact instanceof Fact.Picked picked && picked.subject() instanceof Fruit fruit) {
          if (picked.isUnripe() || FruitStory.pickedTooSoon(fruit, picked)) {
            unripe.add(fruit.key());
          }
          judgeDays(fruit, picked);
        }
      }
      seen.forEach(this::judge);
    }

    private Optional<Likely> likely(SeenFigure figure) {
      Line line = figure.stand().lot().line();
      return likely
          .computeIfAbsent(figure.sort(), s -> new HashMap<>())
          .computeIfAbsent(line.name(), n -> Likely.of(line, figure.sort(), season.garden()));
    }

    private void judge(SeenFigure figure) {
      Optional<Likely> known = likely(figure);
      if (known.isEmpty()) {
        return;
      }
      boolean tooMuch = known.get().isTooMuch(figure.figure());
      boolean tooLittle = known.get().isTooLittle(figure.figure()) && isOfRipeFruit(figure);
      if ((tooMuch || tooLittle) && !isLineKnownForIt(figure, tooMuch)) {
        found(figure, known.get(), tooMuch);
      }
    }

    /** Unmarked fruit is for the kitchen, and of some kinds eaten small. */
    private boolean isOfRipeFruit(SeenFigure figure) {
      return figure.isOfMarkedFruit()
          && figure.subject() instanceof Fruit fruit
          && !unripe.contains(fruit.key());
    }

    private boolean isLineKnownForIt(SeenFigure figure, boolean tooMuch) {
      List<SeenFigure> alike = new ArrayList<>();
      for (SeenFigure other : seen) {
        boolean asFar =
            tooMuch
                ? other.figure() * ABOUT_AS_FAR >= figure.figure()
                : other.figure() <= figure.figure() * ABOUT_AS_FAR;
        if (asFar
            && other.sort() == figure.sort()
            && other.stand().year() != figure.stand().year()
            && other.stand().lot().line().name().equals(figure.stand().lot().line().name())
            && alike.stream().noneMatch(o -> o.subject().equals(other.subject()))) {
          alike.add(other);
        }
      }
      return alike.size() >= KNOWN_FOR_IT;
    }

    private void found(SeenFigure figure, Likely known, boolean tooMuch) {
      FigureWords words = new FigureWords(figure, known, season.garden().units());
      Reporter.Report report =
          report(figure.stand(), figure.place(), words.says(tooMuch)).fact(known.reason());
      List<String> meant = figure.isPlain() ? known.meant(figure) : List.of();
      meant.forEach(text -> report.mend(Mend.writing(figure.place(), text)));
      report.help(words.help(meant));
    }

    private void judgeDays(Fruit fruit, Fact.Picked picked) {
      Optional<Reasoned<Range>> days = FruitStory.ripeAfter(fruit);
      if (days.isEmpty()) {
        return;
      }
      Optional<Reasoned<Range>> seed = fruit.facts().get(CropFacts.SEED_RIPE);
      boolean seedLater = seed.isPresent() && seed.get().value().high() > days.get().value().high();
      Reasoned<Range> longest = seedLater ? seed.orElseThrow() : days.get();
      long hung = ChronoUnit.DAYS.between(fruit.date(), picked.date());
      if (hung > TOO_LONG * longest.value().high()) {
        report(
                fruit.seedParent().stand(),
                picked.span(),
                Words.tick(fruit.tag())
                    + " was picked "
                    + hung
                    + " days after its pollination; fruit of its kind is ripe"
                    + (seedLater ? ", seed and all, after " : " after ")
                    + longest.value()
                    + " days.")
            .marked("picked here")
            .also(fruit.span(), "pollinated here")
            .fact(longest.reason())
            .help("Look whether one of the dates has a wrong month, or the tag is another's.");
      }
    }

    private Reporter.Report report(Stand stand, Span place, String says) {
      Reporter.Report report =
          reporter.report(stand.lot(), place, says).concerns(stand.lot().line());
      stand
          .planting()
          .ifPresent(
              p -> {
                report.concerns(p);
                p.bed().ifPresent(report::concerns);
              });
      return report;
    }
  }
}
