package slipday.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.garden.Crop;
import slipday.garden.CropFacts;
import slipday.garden.FlowerCare;
import slipday.garden.Garden;
import slipday.garden.Outsider;
import slipday.garden.Planting;
import slipday.garden.PollenReach;
import slipday.garden.Sex;
import slipday.garden.Species;
import slipday.language.PlanClauses;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.source.Span;

/** Whose pollen can reach whose fruiting flowers, by direction. */
final class Crossing {
  private static final double UNKNOWN_ISOLATION = 800;

  private final Garden garden;
  private final List<PlantingSeason> plantings;
  private final Map<String, String> groups = new HashMap<>();
  private final Map<Meets, Overlap.Meeting> meetings = new HashMap<>();

  private record Meets(Traces donor, Event sheds, Traces receiver) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Meets meets
          && donor.equals(meets.donor)
          && sheds == meets.sheds
          && receiver.equals(meets.receiver);
    }

    @Override
    public int hashCode() {
      return 31 * donor.hashCode() + receiver.hashCode();
    }
  }

  Crossing(Garden garden, List<PlantingSeason> plantings) {
    this.garden = garden;
    this.plantings = plantings;
    garden.species().values().forEach(this::join);
  }

  /** Species that may cross, directly or over a third, share a group; the sweep runs per group. */
  private void join(Species species) {
    groups.putIfAbsent(species.name(), species.name());
    for (Reasoned<CropFacts.CrossDegree> degree : species.facts().all(CropFacts.CROSSES_WITH)) {
      String other = degree.value().species();
      groups.putIfAbsent(other, other);
      String mine = groups.get(species.name());
      String theirs = groups.get(other);
      groups.replaceAll((name, group) -> group.equals(theirs) ? mine : group);
    }
  }

  List<Exposure> exposures() {
    List<Exposure> found = new ArrayList<>();
    Map<String, List<PlantingSeason>> byGroup = new HashMap<>();
    for (PlantingSeason p : plantings) {
      if (p.flowers()) {
        String species = p.planting().species().name();
        byGroup
            .computeIfAbsent(groups.getOrDefault(species, species), g -> new ArrayList<>())
            .add(p);
      }
    }
    byGroup.values().forEach(group -> sweep(group, found));
    plantings.stream().filter(PlantingSeason::flowers).forEach(p -> fromOutside(p, found));
    return inOrder(found);
  }

  /** By the place of the receiver, then of what sheds. */
  private static List<Exposure> inOrder(List<Exposure> found) {
    Placed[] placed = new Placed[found.size()];
    Arrays.setAll(placed, i -> new Placed(found.get(i)));
    Arrays.sort(placed);
    List<Exposure> ordered = new ArrayList<>(placed.length);
    for (Placed p : placed) {
      ordered.add(p.exposure);
    }
    return ordered;
  }

  /** With its places looked up once: there can be very many. */
  private record Placed(Span receiver, Span source, Exposure exposure)
      implements Comparable<Placed> {
    Placed(Exposure exposure) {
      this(exposure.receiver().span(), exposure.source().span(), exposure);
    }

    @Override
    public int compareTo(Placed other) {
      int byReceiver = receiver.compareTo(other.receiver);
      if (byReceiver != 0) {
        return byReceiver;
      }
      int bySource = source.compareTo(other.source);
      return bySource != 0 ? bySource : crop().compareTo(other.crop());
    }

    private String crop() {
      return exposure.source().crop().name();
    }
  }

  private void sweep(List<PlantingSeason> group, List<Exposure> found) {
    List<BloomSweep.Window> windows = group.stream().map(Crossing::window).toList();
    List<Party> parties = group.stream().map(Party::of).toList();
    BloomSweep.sweep(
        windows,
        (i, j) -> {
          between(parties.get(i), parties.get(j)).ifPresent(found::add);
          between(parties.get(j), parties.get(i)).ifPresent(found::add);
        });
  }

  /** What is asked of a planting for each that it meets, looked up once. */
  private record Party(
      PlantingSeason season,
      Planting planting,
      PollenSource source,
      Sex sex,
      Reasoned<Range> withinSpecies,
      Reasoned<Range> isolation,
      Reason bloom,
      Reason flowers) {
    static Party of(PlantingSeason season) {
      Planting planting = season.planting();
      return new Party(
          season,
          planting,
          PollenSource.of(planting),
          planting.line().sex(),
          PollenReach.within(planting.species()),
          Crossing.isolation(planting),
          season.date(Event.FIRST_FRUITING).map(Reasoned::reason).orElseGet(season::modelReason),
          planting.places().reason(PlanClauses.FLOWERS));
    }
  }

  /** The widest window: from the first flower in any year to the last in any. */
  static BloomSweep.Window window(PlantingSeason p) {
    int males = p.traces().first(Event.FIRST_MALE);
    int fruiting = p.traces().first(Event.FIRST_FRUITING);
    return new BloomSweep.Window(Math.min(males, fruiting), p.traces().last(Event.BLOOM_ENDS));
  }

  private Optional<Exposure> between(Party donor, Party receiver) {
    Planting from = donor.planting();
    Planting to = receiver.planting();
    if (from.line().name().equals(to.line().name()) || !reaches(donor, receiver)) {
      return Optional.empty();
    }
    boolean sameSpecies = from.species().name().equals(to.species().name());
    Optional<Reasoned<Range>> degree =
        sameSpecies
            ? Optional.of(receiver.withinSpecies())
            : PollenReach.degree(from.species(), to.species());
    Reasoned<Range> isolation = receiver.isolation();
    Optional<Double> distance = distance(from, to);
    boolean far = distance.filter(d -> d >= isolation.value().high()).isPresent();
    if (degree.isEmpty() || far) {
      return Optional.empty();
    }
    Overlap.Meeting meeting = meeting(donor, receiver);
    if (meeting.chance() <= 0) {
      return Optional.empty();
    }
    Reason crosses = degree.get().reason();
    return Optional.of(
        new Exposure(
            donor.source(),
            to,
            degree.get().value(),
            sameSpecies,
            Optional.of(meeting.chance()),
            Optional.of(meeting.mornings()),
            distance,
            isolation.value(),
            intoSeed(to),
            () -> because(donor, receiver, crosses, distance)));
  }

  private Reason because(Party donor, Party receiver, Reason crosses, Optional<Double> distance) {
    Planting from = donor.planting();
    Planting to = receiver.planting();
    List<Reason> reasons = new ArrayList<>();
    reasons.add(crosses);
    reasons.add(donor.bloom());
    reasons.add(receiver.bloom());
    reasons.add(donor.flowers());
    reasons.add(receiver.flowers());
    distance.ifPresent(d -> reasons.add(bedsApart(from, to, d)));
    reasons.add(receiver.isolation().reason());
    return Reason.derived(
        "`" + from.name() + "` sheds pollen while `" + to.name() + "` has flowers that set fruit",
        reasons);
  }

  /** Plantings of one kind share their traces, and so what comes of comparing them. */
  private Overlap.Meeting meeting(Party donor, Party receiver) {
    Event sheds = Overlap.sheds(donor.sex());
    return meetings.computeIfAbsent(
        new Meets(donor.season().traces(), sheds, receiver.season().traces()),
        m -> Overlap.of(m.donor(), m.sheds(), m.receiver(), Event.BLOOM_ENDS));
  }

  private Reason bedsApart(Planting from, Planting to, double metres) {
    List<Reason> beds = new ArrayList<>();
    from.bed().ifPresent(b -> beds.add(b.places().reason(PlanClauses.CORNER)));
    to.bed().ifPresent(b -> beds.add(b.places().reason(PlanClauses.CORNER)));
    return Reason.derived(
        "their beds lie " + garden.units().wholeDistance(metres) + " apart, edge to edge", beds);
  }

  /** Whether the donor's pollen gets out, and to the receiver: cages let none in or out. */
  private static boolean reaches(Party from, Party to) {
    FlowerCare giving = from.planting().flowers();
    FlowerCare taking = to.planting().flowers();
    boolean fruits =
        taking.how() != FlowerCare.How.FEMALES_REMOVED
            && taking.how() != FlowerCare.How.ALL_REMOVED
            && to.sex() != Sex.SETS_WITHOUT_POLLEN;
    if (giving.caged() || taking.caged()) {
      return fruits && from.sex().shedsPollen() && inOneCage(from.planting(), to.planting());
    }
    return fruits && giving.sheds(from.sex());
  }

  private static boolean inOneCage(Planting a, Planting b) {
    return a.flowers().cagedWith().contains(b.name());
  }

  private static boolean intoSeed(Planting receiver) {
    return receiver.seedSaved()
        && (receiver.flowers().seedFlowersOpen() || receiver.flowers().caged());
  }

  private static Reasoned<Range> isolation(Planting receiver) {
    return receiver
        .facts()
        .get(CropFacts.ISOLATION)
        .orElseGet(
            () ->
                new Reasoned<>(
                    Range.of(UNKNOWN_ISOLATION),
                    Reason.byDefault("800 m of isolation, where the crop names none.")));
  }

  private static Optional<Double> distance(Planting a, Planting b) {
    return a.bed().flatMap(first -> b.bed().flatMap(first::distanceTo));
  }

  private void fromOutside(PlantingSeason receiver, List<Exposure> found) {
    Planting to = receiver.planting();
    boolean closed =
        to.flowers().caged()
            || to.flowers().how() == FlowerCare.How.FEMALES_REMOVED
            || to.flowers().how() == FlowerCare.How.ALL_REMOVED;
    if (closed) {
      return;
    }
    for (Outsider outsider : garden.outsiders()) {
      for (Reasoned<Crop> crop : outsider.crops()) {
        fromOutside(outsider, crop, to).ifPresent(found::add);
      }
    }
  }

  private static Optional<Exposure> fromOutside(
      Outsider outsider, Reasoned<Crop> crop, Planting to) {
    Optional<Reasoned<Range>> degree = PollenReach.degree(crop.value().species(), to.species());
    Reasoned<Range> isolation = isolation(to);
    boolean far =
        outsider.distance().filter(d -> d.value() >= isolation.value().high()).isPresent();
    if (degree.isEmpty() || far || to.line().sex() == Sex.SETS_WITHOUT_POLLEN) {
      return Optional.empty();
    }
    List<Reason> reasons = new ArrayList<>();
    reasons.add(degree.get().reason());
    reasons.add(crop.reason());
    outsider.distance().ifPresent(d -> reasons.add(d.reason()));
    reasons.add(to.places().reason(PlanClauses.FLOWERS));
    reasons.add(isolation.reason());
    return Optional.of(
        new Exposure(
            PollenSource.of(outsider, crop.value()),
            to,
            degree.get().value(),
            crop.value().species().name().equals(to.species().name()),
            Optional.empty(),
            Optional.empty(),
            outsider.distance().map(Reasoned::value),
            isolation.value(),
            intoSeed(to) && !to.flowers().caged(),
            () ->
                Reason.derived(
                    "`"
                        + outsider.name()
                        + "` has "
                        + crop.value().name()
                        + "; when it flowers nobody knows",
                    reasons)));
  }
}
