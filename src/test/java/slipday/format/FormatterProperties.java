package slipday.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Assertions;
import slipday.finding.Finding;
import slipday.language.Plans;
import slipday.language.Texts;

/** Whatever the text, reading it ends in findings, and laying it out loses and changes nothing. */
class FormatterProperties {
  private static final Duration LONG_ENOUGH = Duration.ofSeconds(10);

  @Provide
  Arbitrary<String> anyText() {
    return Plans.anyText();
  }

  @Provide
  Arbitrary<String> mutated() {
    return Plans.mutated();
  }

  @Property(tries = 1000)
  void anyTextEndsInFindings(@ForAll("anyText") String text) {
    holds(text);
  }

  @Property(tries = 200)
  void anyMutationEndsInFindings(@ForAll("mutated") String text) {
    holds(text);
  }

  private static void holds(String text) {
    Assertions.assertTimeoutPreemptively(LONG_ENOUGH, () -> check(text));
  }

  private static void check(String text) {
    String once = Formatter.format(Texts.parse(text)).value();
    assertThat(Formatter.format(Texts.parse(once)).value()).isEqualTo(once);
    assertThat(Texts.comments(once)).isEqualTo(Texts.comments(text));
    assertThat(Texts.meaning(once)).isEqualTo(Texts.meaning(text));
    assertThat(said(once)).isEqualTo(said(text));
    assertThat(once).doesNotContain("\n\n\n").doesNotStartWith("\n").doesNotEndWith("\n\n");
  }

  /** Rules in their order: the mistakes stay what they were. */
  private static List<String> said(String text) {
    return Texts.findings(text).stream().map(Finding::rule).toList();
  }
}
