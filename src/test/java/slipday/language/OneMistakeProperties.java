package slipday.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slipday.finding.Finding;
import slipday.testing.Golden;

/** One wrong line costs one message, on that line, and hides nothing after it. */
class OneMistakeProperties {
  private static final List<String> LINES =
      Golden.read(Path.of("src/test/resources/language/sample.season")).lines().toList();
  private static final List<Integer> SAYING =
      IntStream.range(0, LINES.size()).filter(i -> says(LINES.get(i))).boxed().toList();

  /** Ways to spoil a line for certain. */
  private enum Damage {
    STRAY_AT_END(l -> withoutComment(l) + " ;"),
    BRACKET_AT_END(l -> withoutComment(l) + " {"),
    OPEN_TEXT_AT_END(l -> withoutComment(l) + " \"and"),
    NONSENSE_FIRST(l -> l.replaceFirst("[a-z]+", "qqqq")),
    STRAY_IN_FIRST_WORD(l -> l.replaceFirst("[a-z]", "$0*")),
    BRACKET_IN_FIRST_WORD(l -> l.replaceFirst("[a-z]", "$0(")),
    NUMBER_FIRST(l -> "7 " + l),
    LONE_WORD(l -> "qqqq"),
    TAG_COMMENT(l -> withoutComment(l) + " #3A");

    final UnaryOperator<String> spoil;

    Damage(UnaryOperator<String> spoil) {
      this.spoil = spoil;
    }
  }

  private static boolean says(String line) {
    return !line.isBlank() && !line.strip().startsWith("#");
  }

  private static String withoutComment(String line) {
    return line.replaceFirst(" +# .*", "");
  }

  @Provide
  Arbitrary<Integer> sayingLine() {
    return Arbitraries.of(SAYING);
  }

  @Property(tries = 1000)
  void aSpoiltLineIsToldOfOnceAndAlone(@ForAll("sayingLine") int line, @ForAll Damage damage) {
    List<String> spoilt = new ArrayList<>(LINES);
    spoilt.set(line, damage.spoil.apply(LINES.get(line)));
    List<Finding> findings = Texts.findings(String.join("\n", spoilt));
    assertThat(findings)
        .as(spoilt.get(line))
        .singleElement()
        .satisfies(f -> assertThat(lineOf(f)).isEqualTo(line + 1));
  }

  @Property(tries = 300)
  void aSecondMistakeIsToldOfAsWell(
      @ForAll("sayingLine") int one, @ForAll("sayingLine") int two, @ForAll Damage damage) {
    List<String> spoilt = new ArrayList<>(LINES);
    spoilt.set(one, damage.spoil.apply(LINES.get(one)));
    if (one != two) {
      spoilt.set(two, Damage.STRAY_AT_END.spoil.apply(LINES.get(two)));
    }
    assertThat(Texts.findings(String.join("\n", spoilt)))
        .extracting(OneMistakeProperties::lineOf)
        .contains(one + 1, two + 1)
        .hasSize(one == two ? 1 : 2);
  }

  private static int lineOf(Finding finding) {
    return finding.place().orElseThrow().span().line();
  }
}
