package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipday.descent.Pedigrees;

class TraitCounterTest {
  private static final String PLAN =
      """
      lot pale
        of p
      lot deep
        of q
      trait ribs
        scale 0 to 2
      grow pale
        in south
        plants 9, 50 cm apart
      grow deep
        in south
        plants 4, 50 cm apart
      """;

  private static TraitCounter counter(String... record) {
    return new TraitCounter(Pedigrees.garden(PLAN, List.of(record)).record());
  }

  private static TraitCount only(TraitCounter counter, String trait) {
    List<TraitCount> counts = counter.counts(trait, Optional.empty());
    assertThat(counts).hasSize(1);
    return counts.get(0);
  }

  @Test
  void offTypesAreCountedOnceThoughSeenAndThenRogued() {
    TraitCount count =
        only(
            counter(
                "2027-06-05 planted out pale, 8 plants",
                "2027-06-20 died pale plant 8, wilt",
                "2027-07-18 off-type seen pale plant 7, netted fruit",
                "2027-07-20 rogued pale plant 7, netted fruit",
                "2027-07-20 rogued pale plant 3, round"),
            "Off-Type");
    assertThat(count.counts()).containsExactly(5, 2);
    assertThat(count.classes())
        .extracting(TraitCount.Kind::name)
        .containsExactly("true", "off-type");
    assertThat(count.classes().get(1).which()).containsExactly(3, 7);
    assertThat(count.leftOut())
        .containsExactly(
            "All plants of `pale` that lived are taken as judged: 8 planted out, 1 of them dead.");
  }

  @Test
  void withoutACountOfWhatWasPlantedThePlansFigureStands() {
    TraitCount count = only(counter("2027-07-18 off-type seen pale plant 7, netted"), "off-type");
    assertThat(count.counts()).containsExactly(8, 1);
  }

  @Test
  void moreOffTypesThanPlantsAreNoCount() {
    TraitCount count = only(counter("2027-07-18 off-type seen deep, 6 plants, netted"), "off-type");
    assertThat(count.counts()).containsExactly(6);
    assertThat(count.leftOut()).anyMatch(s -> s.contains("is missing"));
  }

  @Test
  void aPlantIsBitterIfAnyOfItsFruitWas() {
    TraitCount count =
        only(
            counter(
                "2027-08-01 tasted pale plant 1, clean",
                "2027-07-01 selfed pale plant 2, tag 2A",
                "2027-07-02 selfed pale plant 2, tag 2B",
                "2027-08-02 tasted 2A, bitter",
                "2027-08-03 tasted 2B, clean",
                "2027-08-03 tasted pale, clean"),
            "bitter");
    assertThat(count.counts()).containsExactly(1, 1);
    assertThat(count.classes().get(1).which()).containsExactly(2);
    assertThat(count.leftOut())
        .containsExactly("1 line of the record about `pale` names no plant.");
  }

  @Test
  void faultsAreOfThePlantThatBoreTheFruit() {
    TraitCount count =
        only(
            counter(
                "2027-07-01 selfed pale plant 2, tag 2A",
                "2027-08-20 picked 2A, 1.2 kg, fault cracked",
                "2027-08-20 picked pale plant 1, 1.2 kg",
                "2027-08-20 measured pale plant 5, ribs 1",
                "2027-08-21 picked pale plant 2, 1.1 kg"),
            "cracked");
    assertThat(count.counts()).containsExactly(1, 1);
    assertThat(count.classes())
        .extracting(TraitCount.Kind::name)
        .containsExactly("not cracked", "cracked");
    assertThat(count.classes().get(1).which()).containsExactly(2);
  }

  @Test
  void pointsAreClassesAndTornPlantsLeftOut() {
    List<String> record = new ArrayList<>();
    for (int plant = 1; plant <= 6; plant++) {
      record.add("2027-08-10 measured pale plant " + plant + ", ribs " + plant % 3);
    }
    record.add("2027-08-11 measured pale plant 6, ribs 2");
    TraitCount count = only(counter(record.toArray(new String[0])), "ribs");
    assertThat(count.classes()).extracting(TraitCount.Kind::name).containsExactly("0", "1", "2");
    assertThat(count.counts()).containsExactly(1, 2, 2);
    assertThat(count.leftOut())
        .containsExactly("Given unlike figures at different times: plant 6.");
  }

  @Test
  void standsAreAskedForByPlantingLotOrLine() {
    TraitCounter counter =
        counter(
            "2027-08-10 measured pale plant 1, ribs 1", "2027-08-10 measured deep plant 1, ribs 2");
    assertThat(counter.counts("ribs", Optional.empty())).hasSize(2);
    assertThat(counter.counts("ribs", Optional.of("q")))
        .extracting(TraitCount::of)
        .containsExactly("deep");
    assertThat(counter.counts("ribs", Optional.of("pale"))).hasSize(1);
    assertThat(counter.names()).containsExactly("deep", "p", "pale", "q");
    assertThat(counter.known()).containsExactly("ribs");
    assertThat(counter.counts("wings", Optional.empty())).isEmpty();
  }

  @Test
  void ofLaterSeedTheRatiosAreSaidToHoldInSplitFamiliesOnly() {
    String[] record = {"2027-08-10 measured pale plant 1, ribs 1"};
    for (String generation : List.of("F2", "F4")) {
      String plan =
          PLAN.replace("lot pale\n  of p\n", "lot pale\n  of p\n  generation " + generation + "\n");
      TraitCount count =
          only(new TraitCounter(Pedigrees.garden(plan, List.of(record)).record()), "ribs");
      assertThat(count.leftOut().toString().contains("is F4")).isEqualTo(generation.equals("F4"));
    }
  }
}
