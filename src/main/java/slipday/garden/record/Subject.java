package slipday.garden.record;

import slipday.garden.Bed;
import slipday.garden.Line;
import slipday.garden.Lot;

/** What a fact is about. */
public sealed interface Subject
    permits Fruit, Plants, Subject.OfLot, Subject.OfLine, Subject.OfBed {
  /** As the record names it. */
  String name();

  record OfLot(Lot lot) implements Subject {
    @Override
    public String name() {
      return lot.name();
    }
  }

  record OfLine(Line line) implements Subject {
    @Override
    public String name() {
      return line.name();
    }
  }

  record OfBed(Bed bed) implements Subject {
    @Override
    public String name() {
      return bed.name();
    }
  }
}
