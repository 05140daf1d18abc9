package slipday.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.finding.Mend;
import slipday.format.Formatter;
import slipday.garden.FlowerCare;
import slipday.garden.Places;
import slipday.garden.Planting;
import slipday.language.Block;
import slipday.language.Clause;
import slipday.language.Declaration;
import slipday.language.PlanClauses;
import slipday.measure.Months;
import slipday.measure.Reasoned;
import slipday.source.Source;
import slipday.source.Span;

/** What rules offer to write into a plan, laid out as {@code slipday format} does it. */
public final class PlanMends {
  private static final String NO_REASON_YET = "\"\"";

  private PlanMends() {}

  /** The chosen flowers of a planting covered. */
  public static Mend cover(Planting planting) {
    Mend.Edit covered =
        said(planting.places(), PlanClauses.FLOWERS, FlowerCare.How.CHOSEN_COVERED.words());
    return new Mend(
        "Cover the chosen flowers of " + Words.tick(planting.name()), List.of(covered), false);
  }

  /**
   * The days that the gardener fixed for a planting, moved by as many days as lie between two.
   *
   * @param from the day it goes out by the plan, or is sown in place
   * @param to the day it should
   * @return empty where no day is fixed
   */
  public static Optional<Mend> shift(Planting planting, LocalDate from, LocalDate to) {
    long days = ChronoUnit.DAYS.between(from, to);
    List<Mend.Edit> edits = new ArrayList<>();
    shifted(planting, PlanClauses.SOW_ON, planting.sowOn(), days).ifPresent(edits::add);
    shifted(planting, PlanClauses.PLANT_OUT_ON, planting.plantOutOn(), days).ifPresent(edits::add);
    return edits.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Mend("Shift to " + Months.day(to) + ", the nearest day that fits", edits, false));
  }

  private static Optional<Mend.Edit> shifted(
      Planting planting, Clause clause, Optional<Reasoned<LocalDate>> day, long days) {
    return day.map(d -> said(planting.places(), clause, Months.day(d.value().plusDays(days))));
  }

  /**
   * A finding allowed, for a reason yet to be filled in.
   *
   * @param plan the file that says which season it is: a record is no place for it
   */
  static Mend allow(String rule, String subject, Source plan) {
    String text = plan.text();
    String gap = text.isEmpty() || text.endsWith("\n") ? "\n" : "\n\n";
    String block =
        String.join(
            "\n",
            Declaration.ALLOW.word() + " " + rule,
            Formatter.line(PlanClauses.ALLOW_IN, subject),
            Formatter.line(PlanClauses.BECAUSE, NO_REASON_YET),
            "");
    Span end = new Span(plan, text.length(), text.length());
    return new Mend(
        "Allow it, with a reason to fill in", List.of(new Mend.Edit(end, gap + block)), true);
  }

  /** The clause with another value, or as a line of its own after the last of its block. */
  private static Mend.Edit said(Places places, Clause clause, String value) {
    String line = Formatter.line(clause, value);
    return places
        .find(clause)
        .map(span -> new Mend.Edit(span, line.strip()))
        .orElseGet(() -> new Mend.Edit(endOf(places.block()), "\n" + line));
  }

  /** Where the last line of a block ends, past a comment that may stand behind it. */
  private static Span endOf(Block block) {
    Span last =
        block.clauses().isEmpty()
            ? block.span()
            : block.clauses().get(block.clauses().size() - 1).span();
    String text = last.source().text();
    int end = last.end();
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return new Span(last.source(), end, end);
  }
}
