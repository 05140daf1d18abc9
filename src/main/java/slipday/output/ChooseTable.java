package slipday.output;

import java.util.List;
import slipday.output.data.ChooseData;

/** The choice of parents as a table: a row for each fruit. */
public final class ChooseTable {
  private ChooseTable() {}

  public static String of(ChooseData data) {
    return Tables.table(
        List.of("fruit", "parent", "generation", "plants", "share", "seeds", "index", "lots"),
        data.choice().fruits().stream()
            .map(
                f ->
                    List.of(
                        f.tag(),
                        f.parent(),
                        f.generation(),
                        f.plants(),
                        f.share(),
                        f.seeds(),
                        f.index(),
                        String.join(" ", f.savedInto()))));
  }
}
