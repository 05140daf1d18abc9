package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import slipday.app.Checked;
import slipday.finding.Finding;
import slipday.testing.Cases;
import slipday.testing.Golden;

/**
 * Each rule's folder of plans: {@code fires….season} break it, with what is found beside them;
 * {@code quiet….season} do not. A plan without a {@code season} stands under the beginning that the
 * pages' examples share; {@code weather.csv} is an invented record.
 */
class RuleCasesTest {
  @TestFactory
  Stream<DynamicTest> plans() {
    return Cases.in("rules").flatMap(each -> plans(each).map(p -> test(each.name(), p)));
  }

  private static Stream<Path> plans(Cases.Case each) {
    try (Stream<Path> files = Files.list(each.folder())) {
      List<Path> all = files.sorted().toList();
      List<Path> plans = all.stream().filter(p -> p.toString().endsWith(".season")).toList();
      assertThat(plans).as(each.name()).anyMatch(p -> fires(p)).anyMatch(p -> !fires(p));
      List<Path> expected = plans.stream().filter(p -> fires(p)).map(p -> beside(p)).toList();
      assertThat(expected).containsAll(all.stream().filter(p -> !plans.contains(p)).toList());
      return plans.stream();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static boolean fires(Path plan) {
    return plan.getFileName().toString().startsWith("fires");
  }

  private static Path beside(Path plan) {
    String name = plan.getFileName().toString();
    return plan.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ".txt");
  }

  private static DynamicTest test(String rule, Path plan) {
    return DynamicTest.dynamicTest(
        rule + "/" + plan.getFileName(), plan.toUri(), () -> judge(rule, plan));
  }

  private static void judge(String rule, Path plan) {
    String text = new RulePage.Example("season", Golden.read(plan)).plan();
    Checked checked = Plans.check(text);
    assertThat(checked.season()).as(shown(checked.findings())).isPresent();
    List<Finding> found = Plans.of(checked, rule);
    assertThat(found).allSatisfy(f -> assertThat(f.subject()).isNotEmpty());
    if (fires(plan)) {
      assertThat(found).as(shown(checked.findings())).isNotEmpty();
      Golden.check(beside(plan), shown(found));
    } else {
      assertThat(found).as(shown(found)).isEmpty();
    }
  }

  private static String shown(List<Finding> findings) {
    return findings.stream().map(Plans::shown).collect(Collectors.joining("\n"));
  }
}
