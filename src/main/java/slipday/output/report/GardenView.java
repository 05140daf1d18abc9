package slipday.output.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipday.garden.Bed;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.measure.Units;
import slipday.output.Lines;
import slipday.output.report.Template.Raw;
import slipday.output.report.Words.Part;
import slipday.season.Season;

/**
 * The garden from above.
 *
 * @param drawings for a wide page and for a narrow one; none where no bed has a place
 * @param key who is who in them
 * @param notes what could not be drawn, or not as the plan has it
 * @param apart how far kin stands apart, by species
 */
record GardenView(
    List<Drawing> drawings, List<Key> key, List<List<Part>> notes, List<ApartView> apart) {
  private static final double WIDE = 860;
  private static final double NARROW = 340;

  boolean hasApart() {
    return !apart.isEmpty();
  }

  record Drawing(Raw svg) {}

  /** A planting by its initials. */
  record Key(String thing, String initials, String title, String facts) {}

  static GardenView of(Season season, Ids ids, WhyBook book) {
    GardenGround ground = new GardenGround(season);
    Initials initials = new Initials(season.garden().plantings());
    List<Drawing> drawings = new ArrayList<>();
    if (!ground.beds().isEmpty()) {
      drawings.add(drawn(new GardenDrawing(ground, ids, book, initials, WIDE).draw("wide")));
      drawings.add(drawn(new GardenDrawing(ground, ids, book, initials, NARROW).draw("narrow")));
    }
    return new GardenView(
        drawings,
        season.garden().plantings().stream()
            .map(p -> key(p, ids, initials, season.garden().units()))
            .toList(),
        notes(season, ground).stream().map(Words::parts).toList(),
        ApartView.of(season));
  }

  private static Drawing drawn(Svg svg) {
    return new Drawing(new Raw(svg.toString()));
  }

  private static Key key(Planting p, Ids ids, Initials initials, Units units) {
    List<String> facts = new ArrayList<>();
    p.plants().ifPresent(n -> facts.add(Lines.count(n.value(), "plant")));
    p.apart().map(Reasoned::value).ifPresent(a -> facts.add(units.length(a) + " apart"));
    facts.add(p.bed().map(b -> "in " + b.name()).orElse("in no bed"));
    return new Key(ids.of(p), initials.of(p), p.line().title(), String.join(", ", facts));
  }

  private static List<String> notes(Season season, GardenGround ground) {
    List<String> notes = new ArrayList<>();
    Map<String, Bed> drawn = new LinkedHashMap<>();
    ground.beds().forEach(b -> drawn.put(b.name(), b));
    for (Bed bed : season.garden().beds()) {
      if (!drawn.containsKey(bed.name())) {
        notes.add("`" + bed.name() + "` is not drawn: its size or its corner is not told.");
      } else if (ground.layout(bed).squeezed()) {
        notes.add("In `" + bed.name() + "` the plants are drawn closer than planned, to fit.");
      }
    }
    if (!ground.beds().isEmpty()) {
      notes.add(
          "A plan says in which bed, not where in it: plants are drawn in its order, from the west.");
    }
    return notes;
  }
}
