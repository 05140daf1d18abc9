/** Rules of frost, soil, nights, heat, and ripening in time. */
@NullMarked
package slipday.rules.weather;

import org.jspecify.annotations.NullMarked;
