package slipday.garden;

import java.util.function.Function;
import slipday.language.Bound;
import slipday.language.Clause;

/** A fact of a crop by the clause that states it, with how its words become a value. */
public record FactKey<T>(Clause clause, Function<Bound, T> reader) {}
