/**
 * Weather records, the years in them, frost, degree-days, soil and sun: what a site gives a season.
 */
@NullMarked
package slipday.climate;

import org.jspecify.annotations.NullMarked;
