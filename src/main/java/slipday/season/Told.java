package slipday.season;

import java.util.Optional;
import slipday.climate.FrostLaw;
import slipday.climate.ReadSoil;

/**
 * What a gardener without a weather record knows of spring.
 *
 * @param spring the last frost of 0 °C, if told
 * @param soil the soil as it was read; it may not have been
 */
record Told(Optional<FrostLaw> spring, ReadSoil soil) {}
