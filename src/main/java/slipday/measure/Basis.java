package slipday.measure;

import java.util.Locale;

/** What kind of thing a reason rests on. */
public enum Basis {
  /** A line of the gardener's plan. */
  PLAN,
  /** A fact recorded this season or before. */
  RECORD,
  /** A crop fact with its source. */
  CROP_FACT,
  /** Days of the weather record. */
  WEATHER,
  /** A published method, with its source. */
  METHOD,
  /** A default of Slipday's that a plan can override. */
  DEFAULT,
  /** Worked out from the reasons below it. */
  DERIVED;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
