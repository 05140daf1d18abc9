package slipday.garden.record;

import slipday.garden.Bed;
import slipday.garden.Line;
import slipday.garden.Lot;

/** What a fact is about. */
public sealed interface Subject
    permits Fruit, Plants, Subject.OfLot, Subject.OfLine, Subject.OfBed {
  record OfLot(Lot lot) implements Subject {}

  record OfLine(Line line) implements Subject {}

  record OfBed(Bed bed) implements Subject {}
}
