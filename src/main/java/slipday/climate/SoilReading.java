package slipday.climate;

/**
 * A soil temperature the gardener read at sowing depth, in the morning.
 *
 * @param slot the day, on the season's axis
 */
public record SoilReading(int slot, double celsius) {}
