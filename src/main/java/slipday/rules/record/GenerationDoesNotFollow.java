package slipday.rules.record;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.descent.Births;
import slipday.finding.Level;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.genetics.Generation;
import slipday.genetics.PlainGeneration;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** The generation written on seed is not what follows from its parents. */
public final class GenerationDoesNotFollow implements Rule {
  public static final String ID = "generation-does-not-follow";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Births births = new Births(season.garden().record());
    Set<String> judged = new HashSet<>();
    for (Fact.Saved saved : season.garden().record().every(Fact.Saved.class).toList()) {
      Lot lot = saved.lot();
      if (judged.add(lot.name()) && births.of(lot).stream().allMatch(t -> isKnown(t, births))) {
        Optional<Generation> written = Births.label(lot);
        Optional<Generation> follows = births.recorded(lot);
        if (written.isPresent() && follows.filter(f -> !isTrue(written.get(), f)).isPresent()) {
          found(lot, births, follows.get(), reporter);
        }
      }
    }
  }

  private static boolean isKnown(Fact.Saved taking, Births births) {
    return new Taking(taking)
        .parents()
        .allMatch(p -> births.generation(p.stand().lot()).isPresent());
  }

  /** What is not sure, or to be proved, may be written as what it is likely to be. */
  private static boolean isTrue(Generation written, Generation follows) {
    if (follows instanceof Generation.SelfOrCross either) {
      return written.covers(follows)
          || isTrue(written, either.ifCross())
          || isTrue(written, either.ifSelf());
    }
    boolean uncounted =
        follows instanceof PlainGeneration.OpenPollinated open
            && open.times() == 0
            && written instanceof PlainGeneration.OpenPollinated told
            && (open.isolated() || !told.isolated());
    return uncounted
        || written.covers(follows)
        || (follows instanceof Generation.Probable probable && written.covers(probable.likely()));
  }

  private static void found(Lot lot, Births births, Generation follows, Reporter reporter) {
    List<Taking> takings = births.of(lot).stream().map(Taking::new).toList();
    Reasoned<String> label = lot.generation().orElseThrow();
    Reporter.Report report =
        reporter
            .report(
                lot,
                label.reason().place().orElse(lot.span()),
                "The label of lot "
                    + Words.tick(lot.name())
                    + " says "
                    + Words.tick(label.value())
                    + ", and by the record its seed is "
                    + Words.tick(follows.print())
                    + ".")
            .marked("the label")
            .concerns(lot.line());
    for (Taking taking : takings) {
      taking.planting().ifPresent(report::concerns);
      taking.fruit().ifPresent(f -> report.also(f.span(), f.mating().words()));
      taking
          .parents()
          .map(p -> p.stand().lot())
          .distinct()
          .forEach(
              p ->
                  births
                      .generation(p)
                      .ifPresent(
                          g ->
                              report.also(
                                  p.generation().flatMap(r -> r.reason().place()).orElse(p.span()),
                                  "`" + p.name() + "` is " + g.print())));
    }
    report
        .note("The seed in a selfed F4 plant's fruit is F5: a label speaks of the seed.")
        .help(
            "Write "
                + Words.tick(follows.print())
                + ", or leave the label off: it follows from the record.");
  }
}
