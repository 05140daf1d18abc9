package slipday.app;

/**
 * A garden's record of many seasons: every season's plants are of the seed saved in the season
 * before. Nothing is said of how the weather was.
 */
final class RecordYears {
  private static final int FIRST_YEAR = 2017;

  private RecordYears() {}

  /**
   * @param seasons before the one planned
   * @param lots grown in each
   * @param fruits marked on plants of each lot, each on a plant of its own; their seed goes into
   *     one lot
   * @param among whether all lots are of one line, and one fruit in ten has pollen of another lot,
   *     half of the rest their own, and nothing is told of the fruits; else each lot's line is kept
   *     apart and sibbed
   */
  static String of(int seasons, int lots, int fruits, boolean among) {
    StringBuilder text = new StringBuilder();
    int planned = FIRST_YEAR + seasons;
    text.append("season ").append(planned).append('\n');
    text.append(
        """

        site long-kept
          place          44 N, 72 W
          time zone      America/New_York
          last frost     18 May, 1 in 10 after 30 May
          first frost    27 September, 1 in 10 before 14 September

        """);
    for (int i = 0; i < lots; i++) {
      int line = among ? 0 : i;
      if (line == i) {
        text.append("line line-" + i + "\n  is a butternut\n  purpose to keep\n");
      }
      text.append("lot lot-" + i + "-" + FIRST_YEAR + "\n  of line-" + line + "\n  seeds 400\n");
      text.append("bed bed-" + i + "\n  size 12 m x 1.2 m\n");
      text.append("grow lot-" + i + "-" + planned + "\n  in bed-" + i + "\n  plants 12\n");
      text.append("  pollinate sib by hand, for 8 fruits\n  seed saved\n");
    }
    for (int year = FIRST_YEAR; year < planned; year++) {
      for (int i = 0; i < lots; i++) {
        season(text, year, i, lots, fruits, among);
      }
    }
    return text.toString();
  }

  private static void season(
      StringBuilder text, int year, int i, int lots, int fruits, boolean among) {
    String lot = "lot-" + i + "-" + year;
    String y = "\n" + year;
    text.append(y).append("-05-12 sowed ").append(lot).append(", ").append(fruits + 5);
    text.append(" seeds").append(y).append("-05-18 emerged ").append(lot).append(", ");
    text.append(fruits + 3).append(" seedlings").append(y).append("-06-03 planted out ");
    text.append(lot).append(", ").append(fruits + 1).append(" plants");
    text.append(y).append("-06-25 first male flowers ").append(lot);
    text.append(y).append("-07-03 first fruiting flowers ").append(lot);
    for (int f = 1; f <= fruits; f++) {
      String tag = i + "F" + f;
      int father = f % fruits + 1;
      String self = y + "-07-05 selfed " + lot + " plant " + f;
      String sib = y + "-07-05 sibbed " + lot + " plant " + f + " by plant " + father;
      int other = (i * 7 + year * 31 + f) % lots;
      String cross =
          y
              + "-07-05 crossed "
              + lot
              + " plant "
              + f
              + " by lot-"
              + other
              + "-"
              + year
              + " plant 1";
      text.append(among && f % 10 == 0 ? cross : among && f % 2 == 0 ? self : sib);
      text.append(", tag ").append(tag);
      if (!among) {
        ofTheFruit(text, y, tag, f);
      }
      text.append(y).append("-08-22 saved ").append(tag).append(", 30").append(f % 10);
      text.append(" seeds, into lot-").append(i).append('-').append(year + 1);
    }
    text.append('\n');
  }

  private static void ofTheFruit(StringBuilder text, String y, String tag, int f) {
    text.append(y).append("-07-12 took ").append(tag);
    text.append(y).append("-08-1").append(f % 10).append(" picked ").append(tag);
    text.append(", full slip, 1.").append(f % 10).append(" kg, 1").append(f % 5);
    text.append(".4 brix, flavour ").append(f % 10).append(" of 10");
  }
}
