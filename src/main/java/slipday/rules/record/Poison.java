package slipday.rules.record;

/**
 * The usual caution (Pacific Northwest Pest Management Handbooks on cucurbitacins in squash, from
 * memory of the title). Where local advice is stricter, that holds.
 */
final class Poison {
  static final String CAUTION =
      "Bitter cucurbits hold cucurbitacins: cramps, vomiting and worse. Cooking does not destroy"
          + " them, and seasoning hides the taste. Whoever feels ill after eating should call a"
          + " doctor or a poison centre.";

  private Poison() {}
}
