/**
 * Pages to look at and to print, made of the season: one file each, with their drawings in it. What
 * is shown was worked out before; here it is only laid out.
 */
@NullMarked
package slipday.output.report;

import org.jspecify.annotations.NullMarked;
