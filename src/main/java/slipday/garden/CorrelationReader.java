package slipday.garden;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipday.finding.Finding;
import slipday.garden.record.KnownTraits;
import slipday.genetics.mixed.JointModel;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.measure.Quantity;
import slipday.source.Span;

/** What a goal says of how its traits go together: pairs, each once, that can all be so at once. */
final class CorrelationReader {
  private static final String OUT_OF_RANGE = "figure-out-of-range";

  private final List<Finding> findings;
  private final TraitNames names;

  CorrelationReader(List<Finding> findings, KnownTraits traits) {
    this.findings = findings;
    this.names = new TraitNames(findings, traits);
  }

  List<Goal.Correlation> read(Block block, Clause kind) {
    Map<String, Span> first = new HashMap<>();
    List<Goal.Correlation> read = new ArrayList<>();
    for (BoundClause clause : block.every(kind).toList()) {
      Bound bound = clause.bound();
      boolean one = names.find(bound.name("trait")).isPresent();
      boolean other = names.find(bound.name("other")).isPresent();
      if (one && other && fits(clause) && isNew(clause, first)) {
        read.add(
            new Goal.Correlation(
                bound.name("trait").text(),
                bound.name("other").text(),
                bound.number("correlation"),
                clause.span()));
      }
    }
    if (!read.isEmpty() && !canAllBe(read)) {
      contradicts(read);
      return List.of();
    }
    return read;
  }

  private boolean fits(BoundClause clause) {
    Bound bound = clause.bound();
    double value = bound.number("correlation");
    if (KnownTraits.key(bound.name("trait").text())
        .equals(KnownTraits.key(bound.name("other").text()))) {
      findings.add(
          Finding.error(
                  OUT_OF_RANGE,
                  bound.name("other").span(),
                  "`" + bound.name("other").text() + "` goes together with itself in any case.")
              .withHelp("Name the other trait of the pair, or leave the line out."));
      return false;
    }
    if (Math.abs(value) >= 1) {
      String help =
          Math.abs(value) == 1
              ? "Traits that go together wholly are one and the same: aim at one of them only."
              : "It goes from -1, one up as the other goes down, to 1.";
      findings.add(
          Finding.error(
                  OUT_OF_RANGE,
                  bound.find("correlation").orElseThrow().span(),
                  "A correlation of " + Quantity.plain(value) + " can't be.")
              .withHelp(help));
      return false;
    }
    return true;
  }

  private boolean isNew(BoundClause clause, Map<String, Span> first) {
    String pair =
        KnownTraits.pair(clause.bound().name("trait").text(), clause.bound().name("other").text());
    Span earlier = first.putIfAbsent(pair, clause.span());
    if (earlier != null) {
      findings.add(
          Finding.error(
                  "said-twice", clause.span(), "The correlation of these traits is stated twice.")
              .also(earlier, "stated first")
              .withHelp("Keep the one that was found for plants like these."));
    }
    return earlier == null;
  }

  /** Whether the matrix of all pairs, those not named at 0, is positive definite. */
  private static boolean canAllBe(List<Goal.Correlation> read) {
    Map<String, Integer> places = new LinkedHashMap<>();
    for (Goal.Correlation each : read) {
      places.putIfAbsent(KnownTraits.key(each.trait()), places.size());
      places.putIfAbsent(KnownTraits.key(each.other()), places.size());
    }
    double[][] matrix = new double[places.size()][places.size()];
    for (int i = 0; i < matrix.length; i++) {
      matrix[i][i] = 1;
    }
    for (Goal.Correlation each : read) {
      int i = places.getOrDefault(KnownTraits.key(each.trait()), 0);
      int j = places.getOrDefault(KnownTraits.key(each.other()), 0);
      matrix[i][j] = each.value();
      matrix[j][i] = each.value();
    }
    return JointModel.canBe(matrix);
  }

  private void contradicts(List<Goal.Correlation> read) {
    Finding finding =
        Finding.error(
                OUT_OF_RANGE,
                read.get(read.size() - 1).span(),
                "This correlation and those stated before it can't all be so: "
                    + "what two traits have in common with a third bounds what they have in common"
                    + " with each other.")
            .labelled("can't be beside the others");
    for (Goal.Correlation each : read.subList(0, read.size() - 1)) {
      finding = finding.also(each.span(), "stated before");
    }
    findings.add(
        finding.withHelp(
            "Pairs that are not named count as 0: name those too, or bring the figures nearer to"
                + " 0."));
  }
}
