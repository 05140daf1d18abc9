package slipday.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slipday.testing.Golden;

/** Who may lean on whom. */
@AnalyzeClasses(packages = "slipday", importOptions = MainClassesOnly.class)
class FloorsTest {
  @ArchTest
  static void everyClassStandsOnADrawnFloor(JavaClasses all) {
    Drawing drawing = Drawing.read();
    assertThat(all.stream().map(c -> Drawing.topPackage(c.getPackageName())).distinct())
        .isSubsetOf(drawing.floors().keySet());
  }

  @ArchTest
  static void importsGoDown(JavaClasses all) {
    classes().should(leanOnlyDownwards(Drawing.read())).check(all);
  }

  @ArchTest
  static void packagesLeanOnOneAnotherOneWayOnly(JavaClasses all) {
    slices().matching("slipday.(*)..").should().beFreeOfCycles().check(all);
  }

  @ArchTest
  static void theParserStaysBehindItsFacade(JavaClasses all) {
    noClasses()
        .that()
        .resideOutsideOfPackages("slipday.syntax", "slipday.syntax.grammar")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("slipday.syntax.grammar..", "org.antlr..")
        .check(all);
  }

  @ArchTest
  static void theCommandLineIsTheCommandsAlone(JavaClasses all) {
    onlyIn("slipday.command..", "picocli..").check(all);
  }

  @ArchTest
  static void theCalendarLibraryIsTheOutputsAlone(JavaClasses all) {
    onlyIn("slipday.output..", "net.fortuna.ical4j..").check(all);
  }

  @ArchTest
  static void theLayoutOfGraphsIsTheReportsAlone(JavaClasses all) {
    onlyIn("slipday.output.report..", "org.eclipse.elk..").check(all);
  }

  @ArchTest
  static void theEditorsProtocolStaysWithTheEditor(JavaClasses all) {
    onlyIn("slipday.editor..", "org.eclipse.lsp4j..").check(all);
  }

  @ArchTest
  static void sparseMatricesStayWithGenetics(JavaClasses all) {
    onlyIn("slipday.genetics..", "org.ejml..").check(all);
  }

  @Test
  void theDrawingIsReadRowByRow() {
    String javadoc =
        "<pre>\n * 0  soil   earth, stones      worms     those who dig\n"
            + " *    water  rain\n * 1  roots  what holds\n * </pre>";
    assertThat(Drawing.of(javadoc).floors())
        .isEqualTo(Map.of("soil", 0, "worms", 0, "water", 0, "roots", 1));
    assertThatThrownBy(() -> Drawing.of("<pre>\n * soil\n</pre>"))
        .hasMessageContaining("Not a row");
  }

  private static ArchRule onlyIn(String home, String library) {
    return noClasses()
        .that()
        .resideOutsideOfPackage(home)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library);
  }

  private static ArchCondition<JavaClass> leanOnlyDownwards(Drawing drawing) {
    return new ArchCondition<>("lean only on its own floor or those below") {
      @Override
      public void check(JavaClass from, ConditionEvents events) {
        int floor = drawing.floorOf(Drawing.topPackage(from.getPackageName()));
        from.getDirectDependenciesFromSelf().stream()
            .filter(d -> d.getTargetClass().getPackageName().startsWith("slipday."))
            .filter(
                d ->
                    drawing.floorOf(Drawing.topPackage(d.getTargetClass().getPackageName()))
                        > floor)
            .forEach(d -> events.add(SimpleConditionEvent.violated(d, d.getDescription())));
      }
    };
  }

  /** The guide repeats the drawing without what each package holds. */
  @Test
  void theGuideShowsTheFloorsThatAreDrawn() {
    String guide = Golden.read(Path.of("DEVELOPERS.md"));
    int from = guide.indexOf("```\n") + "```\n".length();
    Map<String, Integer> shown = new TreeMap<>();
    for (String line : guide.substring(from, guide.indexOf("```", from)).lines().toList()) {
      List<String> cells = List.of(line.split(" {2,}"));
      cells.stream().skip(1).forEach(c -> shown.put(c, Integer.valueOf(cells.get(0))));
    }
    assertThat(shown).isEqualTo(new TreeMap<>(Drawing.read().floors()));
  }
}
