/** The one pipeline that every command goes through: load, parse, resolve, season, check. */
@NullMarked
package slipday.app;

import org.jspecify.annotations.NullMarked;
