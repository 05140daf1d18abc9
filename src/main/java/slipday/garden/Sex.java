package slipday.garden;

import java.util.Arrays;

/** Which flowers the plants of a line bear. */
public enum Sex {
  MALE_AND_FEMALE("male and female"),
  MALE_AND_PERFECT("male and perfect"),
  PERFECT("perfect"),
  ALL_FEMALE("all female"),
  ON_TWO_PLANTS("apart on two plants"),
  SETS_WITHOUT_POLLEN("sets without pollen");

  private final String words;

  Sex(String words) {
    this.words = words;
  }

  /** As the language writes it. */
  public String words() {
    return words;
  }

  static Sex of(String words) {
    return Arrays.stream(values()).filter(s -> s.words.equals(words)).findFirst().orElseThrow();
  }

  /** Whether some flowers only shed pollen. */
  public boolean hasMaleFlowers() {
    return this == MALE_AND_FEMALE
        || this == MALE_AND_PERFECT
        || this == ON_TWO_PLANTS
        || this == SETS_WITHOUT_POLLEN;
  }

  /** Whether the flower that bears the fruit has anthers of its own. */
  public boolean fruitingFlowersArePerfect() {
    return this == MALE_AND_PERFECT || this == PERFECT;
  }

  public boolean shedsPollen() {
    return this != ALL_FEMALE;
  }

  /** How the trade calls the flower that bears the fruit: "female" or "perfect". */
  public String fruitingFlower() {
    return fruitingFlowersArePerfect() ? "perfect" : "female";
  }
}
