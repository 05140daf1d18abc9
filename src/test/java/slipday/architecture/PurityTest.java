package slipday.architecture;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.FileReader;
import java.io.FileWriter;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.BaseStream;
import java.util.stream.Stream;

/**
 * Below the floor of {@code app} the same text gives the same answer, anywhere and on any day:
 * what's outside is handed in.
 */
@AnalyzeClasses(packages = "slipday", importOptions = MainClassesOnly.class)
class PurityTest {
  @ArchTest
  static void noStreamsOfTheProcessAndNoExit(JavaClasses all) {
    below().should().accessField(System.class, "out").check(all);
    below().should().accessField(System.class, "err").check(all);
    below().should().accessField(System.class, "in").check(all);
    belowCalls(System.class, "exit|getenv|getProperty|lineSeparator").check(all);
    belowCalls(Runtime.class, ".*").check(all);
    belowCalls(Throwable.class, "printStackTrace").check(all);
  }

  @ArchTest
  static void noFiles(JavaClasses all) {
    below()
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(
            Files.class,
            File.class,
            FileInputStream.class,
            FileOutputStream.class,
            FileReader.class,
            FileWriter.class,
            RandomAccessFile.class)
        .check(all);
  }

  @ArchTest
  static void noClock(JavaClasses all) {
    below()
        .should()
        .accessTargetWhere(
            target(owner(JavaClass.Predicates.resideInAPackage("java.time")))
                .and(target(name("now"))))
        .check(all);
    belowCalls(Clock.class, "system.*|tick.*").check(all);
    belowCalls(System.class, "currentTimeMillis|nanoTime").check(all);
    below().should().callConstructor(Date.class).check(all);
  }

  @ArchTest
  static void noDefaultLocaleAndZone(JavaClasses all) {
    belowCalls(Locale.class, "getDefault").check(all);
    belowCalls(ZoneId.class, "systemDefault").check(all);
    belowCalls(TimeZone.class, "getDefault").check(all);
    belowCalls(String.class, "formatted").check(all);
    belowCalls(String.class, "format", String.class, Object[].class).check(all);
    belowCalls(String.class, "toLowerCase|toUpperCase", new Class<?>[0]).check(all);
    belowCalls(DateTimeFormatter.class, "ofPattern", String.class).check(all);
  }

  @ArchTest
  static void noChance(JavaClasses all) {
    below()
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(Random.class, SecureRandom.class, ThreadLocalRandom.class)
        .check(all);
    belowCalls(Math.class, "random").check(all);
    belowCalls(UUID.class, "randomUUID").check(all);
  }

  @ArchTest
  static void noThreads(JavaClasses all) {
    below()
        .should()
        .dependOnClassesThat(
            JavaClass.Predicates.assignableTo(Thread.class)
                .or(JavaClass.Predicates.assignableTo(Executor.class))
                .or(JavaClass.Predicates.assignableTo(Future.class)))
        .check(all);
    belowCalls(Collection.class, "parallelStream").check(all);
    belowCalls(BaseStream.class, "parallel").check(all);
  }

  @ArchTest
  static void noNetwork(JavaClasses all) {
    below().should().dependOnClassesThat().resideInAPackage("java.net..").check(all);
  }

  private static GivenClassesConjunction below() {
    Drawing drawing = Drawing.read();
    int app = drawing.floorOf("app");
    return noClasses()
        .that(
            DescribedPredicate.describe(
                "stand below app",
                (JavaClass c) -> drawing.floorOf(Drawing.topPackage(c.getPackageName())) < app));
  }

  private static ArchRule belowCalls(Class<?> type, String methods) {
    return below().should().accessTargetWhere(calls(type, methods));
  }

  private static ArchRule belowCalls(Class<?> type, String methods, Class<?>... parameters) {
    DescribedPredicate<AccessTarget> taking =
        DescribedPredicate.describe(
            "taking " + List.of(parameters),
            t ->
                t instanceof CodeUnitAccessTarget unit
                    && unit.getRawParameterTypes().stream()
                        .map(JavaClass::getFullName)
                        .toList()
                        .equals(Stream.of(parameters).map(Class::getName).toList()));
    return below().should().accessTargetWhere(calls(type, methods).and(target(taking)));
  }

  /** Calls, and references such as {@code String::toLowerCase}. */
  private static DescribedPredicate<JavaAccess<?>> calls(Class<?> type, String methods) {
    return target(owner(JavaClass.Predicates.assignableTo(type)))
        .and(target(nameMatching(methods)));
  }
}
