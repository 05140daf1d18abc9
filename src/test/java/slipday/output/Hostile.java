package slipday.output;

/** A sound plan whose texts are full of markup, quotes and marks that turn the reading around. */
public final class Hostile {
  public static final String SCRIPT = "<script>document.title='run'</script>";

  public static final String PLAN =
      """
      season 2026

      # SCRIPT <img src=x onerror=alert(1)>
      site hill "</title>SCRIPT<img src=x onerror=alert(1)>"
        place          44.21 N, 72.58 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September

      bed strip "' onclick='alert(1)' x='"
        size           12 m x 1.2 m
        corner         0 m east, 0 m north

      neighbour fence "SCRIPT"
        grows          pepo-gourd
        distance       40 m to the west

      line one "</script>SCRIPT]]>--><svg onload=alert(1)>"
        is a           muskmelon
        purpose        to fix

      line two "& &amp; &lt; {{data}} ${7*7} \u202Eback\u202C"
        is a           acorn-squash
        purpose        to keep
        looks          "SCRIPT"

      lot one-f3
        of             one
        generation     F3
        seeds          140
        harvested      2025

      lot two-2024
        of             two
        seeds          140
        harvested      2024

      grow one-f3
        in             strip
        plants         12, 60 cm apart
        start          indoors, 3 weeks before planting out
        flowers        cover the chosen
        pollinate      self by hand, for 6 fruits
        seed           saved

      grow two-2024
        in             strip
        plants         4, 60 cm apart
        flowers        open
        seed           saved
      """
          .replace("SCRIPT", SCRIPT);

  private Hostile() {}
}
