package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.garden.record.KnownTraits;
import slipday.language.Value;

/** Looks up the traits a goal names. */
final class TraitNames {
  private final List<Finding> findings;
  private final KnownTraits traits;

  TraitNames(List<Finding> findings, KnownTraits traits) {
    this.findings = findings;
    this.traits = traits;
  }

  /** What a figure of the trait is; empty, with a finding, where there is no such trait. */
  Optional<KnownTraits.Kind> find(Value.Name name) {
    Optional<KnownTraits.Kind> kind = traits.find(name.text());
    if (kind.isEmpty()) {
      findings.add(
          Finding.error("unknown-name", name.span(), "There is no trait `" + name.text() + "`.")
              .meant(
                  Nearest.to(name.text(), traits.names()),
                  () ->
                      "Declare it with a line such as `trait "
                          + name.text()
                          + "`, and record it."));
    }
    return kind;
  }
}
