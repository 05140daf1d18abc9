package slipday.demo;

/**
 * What the fruit of a line is like on an invented garden.
 *
 * @param weight net, kg
 * @param sweetness brix; a mean of 0 where nobody measures it
 * @param days from pollination to ripe
 * @param seeds in a fruit
 * @param slips whether it slips from the vine when ripe
 * @param fruits that a plant bears, marked and for the kitchen
 */
record FruitKind(
    Spread weight, Spread sweetness, Spread days, int seeds, boolean slips, Spread fruits) {

  /**
   * Figures of a plant are {@code mean + bred z + placed z}, those of its fruit add {@code own z}.
   *
   * @param bred how far plants differ by what they were born with
   * @param placed how far by where they stand
   * @param own how far the fruits of one plant differ
   */
  record Spread(double mean, double bred, double placed, double own) {}
}
