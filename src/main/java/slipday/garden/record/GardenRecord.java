package slipday.garden.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import slipday.garden.Lot;
import slipday.garden.SeasonYear;

/**
 * Everything recorded, of the plan's season and others, by date.
 *
 * @param facts by date, facts of one day by wording
 * @param seasonYear the plan's season
 */
public record GardenRecord(List<Fact> facts, SeasonYear seasonYear) {
  public GardenRecord {
    facts = List.copyOf(facts);
  }

  /** The plan's season, by its first year. */
  public int season() {
    return seasonYear.year();
  }

  boolean isInSeason(LocalDate date) {
    return new Seasons(seasonYear).of(date) == season();
  }

  /** All facts of one kind, by date. */
  public <T extends Fact> Stream<T> every(Class<T> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** What was recorded of days up to one, that day included. */
  public GardenRecord until(LocalDate last) {
    return new GardenRecord(
        facts.stream().filter(f -> !f.date().isAfter(last)).toList(), seasonYear);
  }

  public boolean isEmpty() {
    return facts.isEmpty();
  }

  /** The takings of seed a lot was born from; none for a lot that was declared. */
  public List<Fact.Saved> origin(Lot lot) {
    return every(Fact.Saved.class).filter(s -> s.lot().name().equals(lot.name())).toList();
  }

  /** The tagged fruits of the plan's season on a planting. */
  public List<Fruit> fruitsOn(String planting) {
    return every(Fruit.class)
        .filter(f -> f.year() == season() && f.seedParent().stand().name().equals(planting))
        .toList();
  }

  static GardenRecord of(Collection<Fact> facts, SeasonYear season) {
    List<Map.Entry<String, Fact>> worded = new ArrayList<>(facts.size());
    facts.forEach(f -> worded.add(Map.entry(StringUtils.normalizeSpace(f.span().text()), f)));
    worded.sort(
        (a, b) -> {
          int byDate = a.getValue().date().compareTo(b.getValue().date());
          return byDate != 0 ? byDate : a.getKey().compareTo(b.getKey());
        });
    List<Fact> sorted = worded.stream().map(Map.Entry::getValue).toList();
    return new GardenRecord(sorted, season);
  }

  /** How each checked fruit stands: the last that was seen of it. */
  public Map<Fruit.Key, Fact.SetChecked> sets() {
    Map<Fruit.Key, Fact.SetChecked> sets = new java.util.LinkedHashMap<>();
    every(Fact.SetChecked.class).forEach(s -> sets.put(s.fruit().key(), s));
    return sets;
  }
}
