package slipday.rules;

import java.util.ArrayList;
import java.util.List;
import slipday.finding.Finding;
import slipday.garden.Garden;
import slipday.season.Season;

/** Runs every rule over a season, then the plan's allowances over what they found. */
public final class Checker {
  private Checker() {}

  /**
   * What is wrong with the allowances of a garden with mistakes, whose season is not reckoned.
   * Names are not looked up: a mistaken thing may have the one that is missing.
   */
  public static List<Finding> allowances(Garden garden) {
    return Allowances.refused(garden);
  }

  /** All findings in their order; what is allowed stays, with the gardener's reason. */
  public static List<Finding> check(Season season) {
    List<Reporter.Report> reports = new ArrayList<>();
    for (Rule rule : RuleCatalog.rules()) {
      Reporter reporter =
          new Reporter(rule, season.garden().season().span().source(), season.garden().units());
      rule.check(season, reporter);
      reports.addAll(reporter.reports());
    }
    List<Finding> findings = new Allowances(season.garden()).over(reports);
    findings.sort(Finding.ORDER);
    return List.copyOf(findings);
  }
}
