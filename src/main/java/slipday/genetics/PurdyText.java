package slipday.genetics;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes the text of {@link Purdy}. */
final class PurdyText {
  /** A cross: one to nine bars, or a number between two. */
  private static final Pattern BARS = Pattern.compile("/(\\d{1,3})/|/{1,9}");

  private static final Pattern DOSES_AFTER = Pattern.compile("([^*]+?)\\s*\\*\\s*(\\d{1,3})");
  private static final Pattern DOSES_BEFORE = Pattern.compile("(\\d{1,3})\\s*\\*\\s*([^*]+?)");

  private static final Pattern NO_NAME = Pattern.compile("(?s).*[/*\\v].*|\\d+");

  /** Beyond this a line is not a pedigree but a slip or a mischief. */
  private static final int MOST_CROSSES = 500;

  /** The parents in their order. */
  private final List<Written> parents;

  /** The order of the cross between parent i and parent i + 1. */
  private final List<Integer> bars;

  private PurdyText(List<Written> parents, List<Integer> bars) {
    this.parents = parents;
    this.bars = bars;
  }

  /** A parent with its doses and on which side of the name they were written. */
  private record Written(Purdy.Parent parent, int doses, Purdy.Side toward) {}

  static Answer<Purdy> parse(String text) {
    List<String> names = new ArrayList<>();
    List<Integer> bars = new ArrayList<>();
    Matcher matcher = BARS.matcher(text);
    int from = 0;
    while (matcher.find()) {
      names.add(text.substring(from, matcher.start()).strip());
      String number = matcher.group(1);
      bars.add(number == null ? matcher.group().length() : Integer.parseInt(number));
      from = matcher.end();
    }
    names.add(text.substring(from).strip());
    if (bars.size() > MOST_CROSSES) {
      return Answer.refused("The pedigree has more than " + MOST_CROSSES + " crosses.");
    }
    List<Written> parents = new ArrayList<>();
    for (String name : names) {
      Answer<Written> written = written(name);
      if (written instanceof Answer.Refused<Written> no) {
        return Answer.refused(no.why());
      }
      written.value().ifPresent(parents::add);
    }
    return new PurdyText(parents, bars).part(0, parents.size() - 1);
  }

  private static Answer<Written> written(String name) {
    if (name.isEmpty()) {
      return Answer.refused("A parent is missing beside a `/`.");
    }
    if (name.indexOf('*') < 0) {
      return isName(name)
          ? Answer.of(new Written(new Purdy.Parent(name), 1, Purdy.Side.SEED_PARENT))
          : Answer.refused(noName(name));
    }
    Matcher after = DOSES_AFTER.matcher(name);
    if (after.matches()) {
      return dosed(after.group(1).strip(), after.group(2), Purdy.Side.POLLEN_PARENT);
    }
    Matcher before = DOSES_BEFORE.matcher(name);
    return before.matches()
        ? dosed(before.group(2).strip(), before.group(1), Purdy.Side.SEED_PARENT)
        : Answer.refused(
            "In `" + name + "` the star stands between a name and its doses: `A/3*B`.");
  }

  private static Answer<Written> dosed(String name, String doses, Purdy.Side toward) {
    int count = Integer.parseInt(doses);
    if (count < 2) {
      return Answer.refused("`" + name + "` has a star, which means two doses or more.");
    }
    return isName(name)
        ? Answer.of(new Written(new Purdy.Parent(name), count, toward))
        : Answer.refused(noName(name));
  }

  static boolean isName(String name) {
    return !name.isBlank() && name.strip().equals(name) && !NO_NAME.matcher(name).matches();
  }

  private static String noName(String name) {
    return "`" + name + "` is no name for a parent: it is on one line and has more than digits.";
  }

  /** What parents {@code first} to {@code last} make. */
  private Answer<Purdy> part(int first, int last) {
    if (first == last) {
      Written alone = parents.get(first);
      return alone.doses == 1
          ? Answer.of(alone.parent)
          : Answer.refused("`" + alone.parent.name() + "` has a star but is crossed with nothing.");
    }
    int at = first;
    for (int i = first; i < last; i++) {
      at = bars.get(i) > bars.get(at) ? i : at;
    }
    int highest = bars.get(at);
    for (int i = first; i < last; i++) {
      if (i != at && bars.get(i) == highest) {
        return Answer.refused("The latest cross, `" + bar(highest) + "`, stands there twice.");
      }
    }
    return starred(at, first, last);
  }

  private Answer<Purdy> starred(int at, int first, int last) {
    if (at == first && parents.get(first).doses > 1) {
      return recurrent(first, at, at + 1, last, Purdy.Side.SEED_PARENT);
    }
    if (at + 1 == last && parents.get(last).doses > 1) {
      return recurrent(last, at, first, at, Purdy.Side.POLLEN_PARENT);
    }
    return part(first, at)
        .then(
            seed ->
                part(at + 1, last)
                    .then(pollen -> inOrder(new Purdy.Cross(seed, pollen), bars.get(at))));
  }

  private Answer<Purdy> recurrent(int who, int at, int first, int last, Purdy.Side side) {
    Written parent = parents.get(who);
    boolean between = who > 0 && who < parents.size() - 1;
    Purdy.Side facing =
        side == Purdy.Side.SEED_PARENT ? Purdy.Side.POLLEN_PARENT : Purdy.Side.SEED_PARENT;
    if (between && parent.toward != facing) {
      String name = parent.parent.name();
      return Answer.refused(
          "The doses of `"
              + name
              + "` stand beside two crosses and could mean either; write them on the side of the"
              + " cross that was repeated: `A/3*B//C` or `C//B*3/A`.");
    }
    return part(first, last)
        .then(
            donor ->
                inOrder(
                    new Purdy.Backcross(donor, parent.parent, parent.doses, side), bars.get(at)));
  }

  private static Answer<Purdy> inOrder(Purdy made, int written) {
    return made.order() == written
        ? Answer.of(made)
        : Answer.refused(
            "The cross written `"
                + bar(written)
                + "` is number "
                + made.order()
                + " in its part"
                + " of the pedigree: `"
                + bar(made.order())
                + "`.");
  }

  static String print(Purdy made) {
    if (made instanceof Purdy.Parent parent) {
      return parent.name();
    }
    if (made instanceof Purdy.Cross cross) {
      return print(cross.seedParent()) + bar(made.order()) + print(cross.pollenParent());
    }
    Purdy.Backcross back = (Purdy.Backcross) made;
    String name = back.recurrent().name();
    String bar = bar(made.order());
    if (back.side() == Purdy.Side.SEED_PARENT) {
      return name + "*" + back.doses() + bar + print(back.donor());
    }
    return print(back.donor()) + bar + back.doses() + "*" + name;
  }

  private static String bar(int order) {
    return switch (order) {
      case 1 -> "/";
      case 2 -> "//";
      default -> "/" + order + "/";
    };
  }
}
