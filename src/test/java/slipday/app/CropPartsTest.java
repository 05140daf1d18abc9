package slipday.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.finding.Outcome;
import slipday.garden.Crop;
import slipday.garden.CropBook;
import slipday.garden.Facts;
import slipday.garden.OtherName;
import slipday.garden.Resolver;
import slipday.garden.StatedFact;
import slipday.source.Source;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;

/** A plan that has only the crop blocks parsed that it needs reads the same facts as with all. */
class CropPartsTest {
  private static final CropBook ALL = BuiltInCrops.book();

  static Stream<String> names() {
    return Stream.concat(ALL.crops().keySet().stream(), ALL.species().keySet().stream()).distinct();
  }

  @ParameterizedTest
  @MethodSource("names")
  void theFactsOfOneCropAreTheSameAsWithAll(String name) {
    SeasonFile plan =
        SeasonParser.parse(Source.of("plan.season", "line x\n  is a " + name + "\n")).value();
    Outcome<CropBook> part = Resolver.crops(BuiltInCrops.neededBy(List.of(plan)));
    assertThat(part.findings()).isEmpty();
    if (ALL.crops().containsKey(name)) {
      Crop whole = ALL.crops().get(name);
      assertThat(told(part.value().crops().get(name).facts())).isEqualTo(told(whole.facts()));
      assertThat(bitterKin(part.value(), whole.species().name()))
          .isEqualTo(bitterKin(ALL, whole.species().name()));
    }
    if (ALL.species().containsKey(name)) {
      assertThat(told(part.value().species().get(name).facts()))
          .isEqualTo(told(ALL.species().get(name).facts()));
    }
  }

  static Stream<String> otherNames() {
    return ALL.crops().values().stream()
        .flatMap(c -> c.otherNames().stream())
        .filter(OtherName::alone)
        .map(OtherName::word);
  }

  @ParameterizedTest
  @MethodSource("otherNames")
  void anotherWordBringsItsCrop(String word) {
    SeasonFile plan =
        SeasonParser.parse(Source.of("plan.season", "line x\n  is a " + word + "\n")).value();
    CropBook part = Resolver.crops(BuiltInCrops.neededBy(List.of(plan))).value();
    assertThat(part.crop(word)).isPresent();
    assertThat(part.crop(word).map(Crop::name)).isEqualTo(ALL.crop(word).map(Crop::name));
  }

  /** Each fact with its place and its source. */
  private static List<String> told(Facts facts) {
    return facts.inForce().map(CropPartsTest::told).toList();
  }

  private static String told(StatedFact fact) {
    return fact.span().label() + " " + fact.words() + " " + fact.cited();
  }

  private static Map<String, Boolean> bitterKin(CropBook book, String species) {
    return book.crops().values().stream()
        .filter(c -> c.species().name().equals(species) && c.isBitter())
        .collect(Collectors.toMap(Crop::name, Crop::isBitter));
  }
}
