package slipday.garden.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.garden.Bed;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.SeasonYear;
import slipday.language.Block;
import slipday.language.BoundFile;

/** From lines of the record to what is known of the garden: first its lots, then all its facts. */
public final class RecordResolver {
  private final Entries entries;
  private final SeasonYear season;
  private final Map<String, Line> lines;
  private final Planned planned;
  private final LotStock stock;

  public RecordResolver(
      BoundFile said, SeasonYear season, Map<String, Line> lines, Planned planned) {
    this.entries = new Entries(said, season);
    this.season = season;
    this.lines = lines;
    this.planned = planned;
    this.stock = new LotStock(entries, planned.lots());
  }

  /** Every lot that seed was saved into; empty where what it comes from is mistaken. */
  public Outcome<Map<String, Optional<Lot>>> births(Map<String, Lot> declared) {
    return new LotBirths(entries, declared, lines, planned).births();
  }

  /** A lot is declared once: what was saved into one of the plan's own is told of. */
  public List<Finding> savedIntoDeclared(Map<String, Lot> declared) {
    List<Finding> findings = new ArrayList<>();
    entries
        .saved()
        .forEach(
            (name, saved) -> {
              Lot lot = declared.get(name);
              if (lot != null && !lot.span().equals(saved.get(0).span())) {
                findings.add(
                    Finding.error(
                            "name-twice",
                            saved.get(0).bound().name("lot").span(),
                            "There are two lots called `" + name + "`.")
                        .labelled("saved into")
                        .also(lot.span(), "declared")
                        .withHelp("Save the seed into a lot of its own name."));
              }
            });
    return findings;
  }

  /** A lot with its last test, and with what is left of it when the plan's season begins. */
  public Lot asRecorded(Lot lot) {
    return stock.known(lot);
  }

  /**
   * The facts, and what of them can't be.
   *
   * @param lots declared and born
   * @param spoilt names whose own declarations are mistaken
   * @param spoiltLots those of them that are lots
   * @param traits the plan's own traits
   */
  public Outcome<GardenRecord> facts(
      List<Planting> plantings,
      Map<String, Lot> lots,
      List<Bed> beds,
      Predicate<String> spoilt,
      Predicate<String> spoiltLots,
      List<Block> traits) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Planting> byName = new LinkedHashMap<>();
    plantings.forEach(p -> byName.put(p.name(), p));
    Map<String, Bed> bedsByName = new LinkedHashMap<>();
    beds.forEach(b -> bedsByName.put(b.name(), b));
    Ground ground = new Ground(byName, lots, lines, bedsByName, spoilt, spoiltLots);
    Subjects subjects = new Subjects(entries, ground, findings);
    FactReader reader = new FactReader(entries, subjects, new Traits(findings, traits), findings);
    GardenRecord record = GardenRecord.of(reader.facts(), season);
    findings.addAll(new Contradictions(record).findings());
    return new Outcome<>(record, findings);
  }
}
