package slipday.garden;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.PlanClauses;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.measure.Units;

/** The site, its beds, and the pollen of others. */
final class PlaceResolver {
  private static final double USUAL_RISK = 0.1;
  private static final Site.Hands USUAL_HANDS = new Site.Hands(1, 10);

  private final List<Finding> findings;
  private final CropResolver crops;
  private final Units units;
  private final Names<Bed> beds;
  private final Names<Outsider> outsiders;

  PlaceResolver(List<Finding> findings, CropResolver crops, Units units) {
    this.findings = findings;
    this.crops = crops;
    this.units = units;
    this.beds = new Names<>("bed", findings);
    this.outsiders = new Names<>("neighbour", findings);
  }

  Names<Bed> beds() {
    return beds;
  }

  List<Outsider> outsiders() {
    return outsiders.all();
  }

  Optional<Site> site(Block block) {
    if (block.head().isEmpty()) {
      return Optional.empty();
    }
    Places places = new Places(block);
    Optional<BoundClause> place = needed(block, PlanClauses.PLACE, "where it lies");
    Optional<BoundClause> zone = needed(block, PlanClauses.TIME_ZONE, "its time zone");
    Optional<ZoneId> zoneId = zone.flatMap(this::zone);
    if (place.isEmpty() || zoneId.isEmpty()) {
      return Optional.empty();
    }
    new FrostOrder(findings, place.get().bound().number("latitude") < 0).check(block);
    Bound head = block.head().get();
    return Optional.of(
        new Site(
            head.name("name").text(),
            head.has("title") ? head.text("title") : head.name("name").text(),
            place(place.get(), places),
            zoneId.get(),
            block.find(PlanClauses.WEATHER).map(PlaceResolver::weather),
            warmer(block),
            block
                .find(PlanClauses.FROST_RISK)
                .map(c -> reasoned(c, c.bound().share("share").share()))
                .orElse(
                    new Reasoned<>(
                        USUAL_RISK,
                        Reason.byDefault("A frost risk of 1 in 10, where the site names none."))),
            block.find(PlanClauses.LAST_FROST).map(c -> frost(c, "late")),
            block.find(PlanClauses.FIRST_FROST).map(c -> frost(c, "early")),
            block
                .every(PlanClauses.SOIL_READING)
                .map(
                    c ->
                        reasoned(
                            c,
                            new Site.SoilReading(
                                c.bound().base("temperature"), c.bound().day("day"))))
                .toList(),
            block.find(PlanClauses.MORNINGS).map(c -> reasoned(c, mornings(c))),
            block
                .find(PlanClauses.HANDS)
                .map(
                    c ->
                        reasoned(
                            c,
                            new Site.Hands(c.bound().count("count"), c.bound().count("flowers"))))
                .orElse(
                    new Reasoned<>(
                        USUAL_HANDS,
                        Reason.byDefault(
                            "One person doing 10 flowers a morning, where the site says"
                                + " nothing."))),
            units,
            places));
  }

  static <T> Reasoned<T> reasoned(BoundClause clause, T value) {
    return new Reasoned<>(value, Reason.quoting(clause));
  }

  private Optional<BoundClause> needed(Block block, Clause clause, String what) {
    Optional<BoundClause> found = block.find(clause);
    if (found.isEmpty() && !block.damaged()) {
      findings.add(
          Finding.error("clause-missing", block.span(), "The site does not say " + what + ".")
              .withHelp("Add a line such as `" + clause.example() + "`."));
    }
    return found;
  }

  private static Reasoned<Site.Place> place(BoundClause c, Places places) {
    Bound b = c.bound();
    Optional<Double> height = b.has("height") ? Optional.of(b.base("height")) : Optional.empty();
    return new Reasoned<>(
        new Site.Place(b.number("latitude"), b.number("longitude"), height),
        places.reason(PlanClauses.PLACE));
  }

  private Optional<ZoneId> zone(BoundClause clause) {
    var name = clause.bound().name("zone");
    try {
      return Optional.of(ZoneId.of(name.text()));
    } catch (DateTimeException e) {
      findings.add(
          Finding.error("unknown-name", name.span(), "There is no time zone `" + name.text() + "`.")
              .meant(
                  ClockNames.zone(name.text())
                      .or(() -> Nearest.to(name.text(), ZoneId.getAvailableZoneIds())),
                  () -> "Write it as region and city, such as `Europe/Berlin`."));
      return Optional.empty();
    }
  }

  static Site.WeatherFile weather(BoundClause c) {
    Optional<String> unit =
        c.bound().has("unit") ? Optional.of(c.bound().choice("unit")) : Optional.empty();
    return new Site.WeatherFile(c.bound().text("path"), unit, c.span());
  }

  private static double warmer(Block block) {
    double warmer =
        block.find(PlanClauses.WARMER).map(c -> c.bound().difference("warmth")).orElse(0.0);
    double colder =
        block.find(PlanClauses.COLDER).map(c -> c.bound().difference("warmth")).orElse(0.0);
    return warmer - colder;
  }

  private int mornings(BoundClause c) {
    int mornings = c.bound().count("count");
    if (mornings > 7 || mornings < 1) {
      findings.add(
          Finding.error("impossible-count", c.span(), "A week has 1 to 7 mornings.")
              .withHelp("Write a number from 1 to 7."));
      return Math.max(1, Math.min(7, mornings));
    }
    return mornings;
  }

  private static Site.StatedFrost frost(BoundClause c, String second) {
    Bound b = c.bound();
    Optional<Site.Odds> odds =
        b.has("share")
            ? Optional.of(new Site.Odds(b.share("share").share(), b.day(second).day()))
            : Optional.empty();
    String text = c.span().plainText();
    return new Site.StatedFrost(b.day("usual").day(), odds, Reason.plan(text, c.span()));
  }

  void bed(Block block) {
    if (block.head().isEmpty()) {
      beds.addMisnamed(block);
      return;
    }
    Bound head = block.head().get();
    String name = head.name("name").text();
    beds.add(
        new Bed(
            name,
            head.has("title") ? head.text("title") : name,
            block
                .find(PlanClauses.SIZE)
                .map(c -> new Bed.Size(c.bound().base("long"), c.bound().base("wide"))),
            block.find(PlanClauses.CORNER).map(PlaceResolver::corner),
            block.find(PlanClauses.VINES).map(c -> c.bound().base("length")).orElse(0.0),
            block
                .find(PlanClauses.FROST_POCKET)
                .map(c -> c.bound().difference("warmth"))
                .orElse(0.0),
            block.every(PlanClauses.GREW).flatMap(c -> grew(c).stream()).toList(),
            new Places(block)));
  }

  private static Bed.Corner corner(BoundClause c) {
    Bound b = c.bound();
    double east = b.base("east") * (b.choice("ew").equals("east") ? 1 : -1);
    double north = b.base("north") * (b.choice("ns").equals("north") ? 1 : -1);
    return new Bed.Corner(east, north);
  }

  private Optional<Reasoned<Bed.Grew>> grew(BoundClause c) {
    return crops
        .need(c.bound().name("crop"))
        .map(crop -> reasoned(c, new Bed.Grew(crop, c.bound().count("year"))));
  }

  void outsider(Block block, boolean volunteer) {
    if (block.head().isEmpty()) {
      return;
    }
    Bound head = block.head().get();
    String name = head.name("name").text();
    Clause what = volunteer ? PlanClauses.IS_A : PlanClauses.GROWS;
    List<Reasoned<Crop>> grown =
        block
            .every(what)
            .flatMap(
                c ->
                    c.bound().names("crop").stream()
                        .flatMap(n -> crops.need(n).stream())
                        .map(x -> reasoned(c, x)))
            .toList();
    if (block.find(what).isEmpty() && !block.damaged()) {
      findings.add(
          Finding.error(
                  "clause-missing",
                  block.span(),
                  "Nothing says what `" + name + "` " + (volunteer ? "is." : "grows."))
              .withHelp("Add a line such as `" + what.example() + "`."));
    }
    outsiders.add(
        new Outsider(
            name,
            head.has("title") ? head.text("title") : name,
            volunteer,
            grown,
            block.find(PlanClauses.DISTANCE).map(c -> reasoned(c, c.bound().base("length"))),
            new Places(block)));
  }
}
