package slipday.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import slipday.descent.Pedigrees;
import slipday.garden.Garden;

class StoreTest {
  private static Garden garden(String... record) {
    return Pedigrees.garden("", record);
  }

  private static Store twoLooked() {
    return Store.of(
        garden(
            "2026-07-20 selfed p-0 plant 1, tag 1A",
            "2026-07-20 selfed p-0 plant 2, tag 2A",
            "2026-07-20 selfed p-0 plant 3, tag 3A",
            "2026-09-20 picked 1A, 1.4 kg",
            "2026-09-20 picked 2A, 1 kg",
            "2026-09-30 picked 3A, 1 kg",
            "2026-09-22 stored 1A, cellar",
            "2026-09-22 stored 2A, cellar",
            "2026-10-02 stored 3A, cellar",
            "2026-10-03 stored 3A, attic",
            "2026-10-20 looked at 2A, sound, 0.97 kg",
            "2026-10-20 scored 2A, flavour 5 of 10",
            "2026-11-19 looked at 1A, sound, 1.26 kg",
            "2026-11-19 scored 1A, flavour 4 of 5",
            "2026-12-19 looked at 2A, rotten"));
  }

  @Test
  void howALineKeepsIsByAllThatWasLookedAt() {
    Keeping keeping = twoLooked().keeping().get(0);
    assertThat(keeping.line().name()).isEqualTo("p");
    assertThat(keeping.fruits()).isEqualTo(2);
    assertThat(keeping.spoilt()).isEqualTo(1);
    assertThat(keeping.soundDays()).contains(60);
    assertThat(keeping.spoiltDays()).contains(90);
    assertThat(keeping.best()).contains(60);
    assertThat(keeping.bestFlavour().orElseThrow()).isCloseTo(0.8, within(1e-12));
    // 3 % in 30 days, and 10 % in 60.
    assertThat(keeping.lostAMonth().orElseThrow()).isCloseTo(0.04, within(1e-12));
  }

  @Test
  void whatLiesThereIsBestAndSpoilsAsItsLineDid() {
    Store store = twoLooked();
    assertThat(store.fruits())
        .extracting(KeptFruit::name)
        .containsExactly("1A of 2026", "3A of 2026");
    KeptFruit third = store.fruits().get(1);
    assertThat(third.where()).contains("attic");
    assertThat(store.best(third)).contains(LocalDate.of(2026, 11, 29));
    assertThat(store.eatBy(third)).contains(LocalDate.of(2026, 12, 29));
  }

  @Test
  void seedTakenEmptiesAFruit() {
    Store store =
        Store.of(
            garden(
                "2026-07-20 selfed p-0 plant 1, tag 1A",
                "2026-09-22 stored 1A, cellar",
                "2026-11-22 saved 1A, 90 seeds, into p-1",
                "2027-02-20 stored p-1, freezer"));
    assertThat(store.fruits()).isEmpty();
    assertThat(store.seed().values()).containsExactly("freezer");
    assertThat(store.keeping().get(0).fruits()).isZero();
  }

  @Test
  void oneScoreTellsNoBestDay() {
    Store store =
        Store.of(
            garden(
                "2026-07-20 selfed p-0 plant 1, tag 1A",
                "2026-09-22 stored 1A, cellar",
                "2026-11-22 looked at 1A, sound, flavour 7 of 10"));
    assertThat(store.best(store.fruits().get(0))).isEmpty();
    assertThat(store.eatBy(store.fruits().get(0))).isEmpty();
  }
}
