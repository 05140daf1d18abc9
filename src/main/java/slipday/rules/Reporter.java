package slipday.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Mend;
import slipday.garden.Named;
import slipday.measure.Reason;
import slipday.measure.Units;
import slipday.source.Source;
import slipday.source.Span;

/**
 * Takes what one rule finds and stamps the rule's id and level on it, so that a rule can't give
 * itself another's.
 */
public final class Reporter {
  private final Rule rule;
  private final Source plan;
  private final Units units;
  private final List<Report> reports = new ArrayList<>();

  /**
   * @param plan where an allowance would be written
   * @param units those the gardener is answered in
   */
  Reporter(Rule rule, Source plan, Units units) {
    this.rule = rule;
    this.plan = plan;
    this.units = units;
  }

  /** The units figures are told in. */
  public Units units() {
    return units;
  }

  /** A finding at the rule's level. */
  public Report report(Named subject, Span place, String message) {
    return add(rule.level(), subject, place, message);
  }

  /** A finding at the rule's milder level. */
  public Report mild(Named subject, Span place, String message) {
    return add(rule.milderLevel(), subject, place, message);
  }

  /** At the rule's level if the case is grave, else at its milder one. */
  public Report report(boolean grave, Named subject, Span place, String message) {
    return grave ? report(subject, place, message) : mild(subject, place, message);
  }

  private Report add(Level level, Named subject, Span place, String message) {
    Report report =
        new Report(Finding.at(rule.id(), level, place, message).about(subject.name()), plan, units);
    reports.add(report);
    return report;
  }

  List<Report> reports() {
    return reports;
  }

  /** A finding being put together. */
  public static final class Report {
    private Finding finding;
    private final Source plan;
    private final Units units;
    private final Set<String> names = new LinkedHashSet<>();

    private Report(Finding finding, Source plan, Units units) {
      this.finding = finding;
      this.plan = plan;
      this.units = units;
      names.add(finding.subject());
    }

    /** The units figures are told in. */
    public Units units() {
      return units;
    }

    /** The words on the mark under the place. */
    public Report marked(String text) {
      finding = finding.labelled(text);
      return this;
    }

    /** Another place that matters. */
    public Report also(Span span, String text) {
      finding = finding.also(span, text);
      return this;
    }

    /** A figure with where it is from, or the trade's reason; a sentence. */
    public Report note(String note) {
      finding = finding.notes().contains(note) ? finding : finding.withNote(note);
      return this;
    }

    /** A reason it rests on, shown as a note and followed down by {@code why}. */
    public Report fact(Reason reason) {
      return note(Words.note(reason)).because(reason);
    }

    /** A reason it rests on that the notes tell already. */
    public Report because(Reason reason) {
      finding = finding.because(reason);
      return this;
    }

    /** What would mend it; a sentence or two. */
    public Report help(String help) {
      finding = finding.withHelp(help);
      return this;
    }

    /** What an editor can offer to write, which would mend it. */
    public Report mend(Mend mend) {
      finding = finding.withMend(mend);
      return this;
    }

    /** Another thing it concerns: an allowance in that one covers it too. */
    public Report concerns(Named thing) {
      names.add(thing.name());
      return this;
    }

    /** Whole; last of its mends, that it be allowed. */
    Finding finding() {
      return finding.withMend(PlanMends.allow(finding.rule(), finding.subject(), plan));
    }

    Set<String> names() {
      return names;
    }
  }
}
