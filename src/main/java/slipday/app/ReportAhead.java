package slipday.app;

import java.time.LocalDate;
import java.util.Optional;
import slipday.garden.Garden;
import slipday.output.report.Breeding;
import slipday.output.report.ReportPage;

/** What the report needs beside the season, reckoned while the season is. */
public final class ReportAhead {
  private final LocalDate day;
  private Optional<Meanwhile<Breeding>> breeding = Optional.empty();

  /**
   * @param day the report is made for
   */
  public ReportAhead(LocalDate day) {
    this.day = day;
  }

  /** Begins with a garden whose names are sound. */
  public void begin(Garden garden) {
    breeding = Optional.of(Meanwhile.begin(() -> Breeding.of(garden.asOf(day))));
    if (!garden.record().isEmpty()) {
      Meanwhile.begin(ReportPage::makeReady);
    }
  }

  /** To be asked for once it has begun. */
  public Breeding breeding() {
    return breeding.orElseThrow().get();
  }
}
