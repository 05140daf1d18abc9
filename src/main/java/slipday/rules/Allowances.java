package slipday.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.garden.Allowance;
import slipday.garden.Garden;
import slipday.garden.Named;
import slipday.language.PlanClauses;
import slipday.language.Value;

/** What the gardener accepts, and what is said of an allowance that can't be followed. */
final class Allowances {
  static final String WITHOUT_REASON = "allow-without-reason";
  static final String NOT_POSSIBLE = "allow-not-possible";
  static final String IDLE = "idle-allow";

  private final Garden garden;
  private final Set<String> names;

  Allowances(Garden garden) {
    this.garden = garden;
    this.names = garden.allowances().isEmpty() ? Set.of() : names(garden);
  }

  /** One name of an allowance that can be followed, with the reason. */
  private record Accepted(String rule, Value.Name thing, String reason) {
    String key() {
      return key(rule, thing.text());
    }

    static String key(String rule, String thing) {
      return rule + " " + thing;
    }
  }

  /** The findings of the rules, allowed where they are, and those about the allowances. */
  List<Finding> over(List<Reporter.Report> reports) {
    List<Finding> said = new ArrayList<>();
    List<Accepted> accepted = new ArrayList<>();
    for (Allowance allowance : garden.allowances()) {
      Optional<Finding> refused = refused(allowance);
      refused.ifPresent(said::add);
      List<Accepted> known = known(allowance, said);
      if (refused.isEmpty()) {
        accepted.addAll(known);
      }
    }
    Map<String, List<Accepted>> byKey =
        accepted.stream().collect(Collectors.groupingBy(Accepted::key));
    Set<String> used = new HashSet<>();
    reports.forEach(r -> said.add(judged(r, byKey, used)));
    accepted.stream().filter(a -> !used.contains(a.key())).map(Allowances::idle).forEach(said::add);
    return said;
  }

  private static Finding judged(
      Reporter.Report report, Map<String, List<Accepted>> byKey, Set<String> used) {
    Finding finding = report.finding();
    if (byKey.isEmpty()) {
      return finding;
    }
    for (String name : report.names()) {
      String key = Accepted.key(finding.rule(), name);
      List<Accepted> accepted = byKey.getOrDefault(key, List.of());
      if (!accepted.isEmpty()) {
        used.add(key);
        if (finding.allowed().isEmpty()) {
          finding = finding.allowedBecause(accepted.get(0).reason());
        }
      }
    }
    return finding;
  }

  /** Allowances that can't be followed whatever the rules find. */
  static List<Finding> refused(Garden garden) {
    return garden.allowances().stream().flatMap(a -> refused(a).stream()).toList();
  }

  private static Optional<Finding> refused(Allowance allowance) {
    String rule = allowance.rule();
    if (!RuleCatalog.ids().contains(rule)) {
      List<String> known = RuleCatalog.rules().stream().map(Rule::id).toList();
      return Optional.of(
          Finding.error(
                  "unknown-name", allowance.stated().span(), "There is no rule `" + rule + "`.")
              .nearest(rule, known, "rule", "slipday explain"));
    }
    if (RuleCatalog.rule(rule).isEmpty()) {
      return Optional.of(
          Finding.error(NOT_POSSIBLE, allowance.span(), "`" + rule + "` can't be allowed.")
              .withHelp("Mend what it is about: only what rules of the garden find can be allowed.")
              .about(rule));
    }
    if (allowance.subjects().isEmpty()) {
      return Optional.of(
          Finding.error(
                  "clause-missing",
                  allowance.span(),
                  "The allowance of `" + rule + "` does not say where it holds.")
              .withHelp("Add a line such as `" + PlanClauses.ALLOW_IN.example() + "`.")
              .about(rule));
    }
    if (allowance.because().filter(b -> !b.isBlank()).isEmpty()) {
      return Optional.of(
          Finding.error(
                  WITHOUT_REASON,
                  allowance.span(),
                  "The allowance of `" + rule + "` gives no reason, so nothing is allowed.")
              .withHelp("Add a line such as `" + PlanClauses.BECAUSE.example() + "`.")
              .about(rule));
    }
    return Optional.empty();
  }

  /** What it names that there is; the rest is told. */
  private List<Accepted> known(Allowance allowance, List<Finding> said) {
    List<Accepted> known = new ArrayList<>();
    for (Value.Name thing : allowance.subjects()) {
      if (names.contains(thing.text())) {
        known.add(new Accepted(allowance.rule(), thing, allowance.because().orElse("")));
      } else {
        said.add(
            Finding.error(
                    "unknown-name",
                    thing.span(),
                    "Nothing in the plan is called `" + thing.text() + "`.")
                .nearest(thing.text(), names, "thing"));
      }
    }
    return known;
  }

  private static Set<String> names(Garden garden) {
    Set<String> names = new HashSet<>();
    Stream.<List<? extends Named>>of(
            garden.plantings(),
            garden.beds(),
            garden.lots(),
            garden.lines(),
            garden.crosses(),
            garden.outsiders(),
            List.of(garden.site()))
        .flatMap(List::stream)
        .forEach(n -> names.add(n.name()));
    return names;
  }

  private static Finding idle(Accepted allowance) {
    return Finding.warning(
            IDLE,
            allowance.thing().span(),
            "Nothing is found of `"
                + allowance.rule()
                + "` in `"
                + allowance.thing().text()
                + "`, so there is nothing to allow.")
        .withHelp("Take the allowance out, so that it hides nothing later.")
        .about(allowance.thing().text());
  }
}
