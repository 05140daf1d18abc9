package slipday.caution;

/**
 * The usual cautions of the trade. Where local advice is stricter, that holds. How cut fruit is
 * kept is a fact of the crop and stands with the crops.
 *
 * <p>On bitterness (cucurbitacins): Pacific Northwest Pest Management Handbooks, from memory of the
 * title. On seed treatments: common practice, no source. On work in heat: National Institute for
 * Occupational Safety and Health 2016, Occupational Exposure to Heat and Hot Environments,
 * publication 2016-106, from memory.
 */
public enum Caution {
  TASTE_FIRST(
      "Before anything else taste each plant's fruit raw: touch a small piece to the tongue and spit"
          + " it out. A bitter plant is destroyed: never eaten, cooked, fed to animals or seeded."
          + " A clean plant clears only itself."),
  POISON(
      "Bitter cucurbits hold cucurbitacins: cramps, vomiting and worse. Cooking does not destroy"
          + " them, and seasoning hides the taste. Whoever feels ill after eating should call a"
          + " doctor or a poison centre."),
  NEXT_GENERATION(
      "It can make the fruit that grows from this seed bitter and poisonous; this year's fruit is"
          + " sound. The danger follows the seed and all that comes of it."),
  /** Short enough for a packet's label. */
  ON_A_LABEL("May be bitter and poisonous: taste each plant first, spit it out."),
  /** The same for seed of which it is known. */
  DESTROY_ON_A_LABEL("Of a plant that tasted bitter, poisonous: destroy this seed."),
  SEED_TREATMENT(
      "Hot water and bleach treat some diseases on some seed, at an exact heat, strength and"
          + " time that your extension service tells; both burn, and bleach fumes harm: open"
          + " the window, cover eyes and hands, mix it with nothing else."),
  WORK_IN_HEAT(
      "Work early in such heat, drink a little and often, and rest in the shade; headache, dizziness"
          + " or nausea means stop, cool down, and call for help if it does not pass."),
  LAW(
      "Local food-safety codes, seed law and plant-variety protection come before anything this tool"
          + " says, and what the law leaves to licensed hands is theirs; ask those who know them.");

  private final String words;

  Caution(String words) {
    this.words = words;
  }

  /** Whole sentences. */
  public String words() {
    return words;
  }
}
