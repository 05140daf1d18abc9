/** Findings: folded, nearest words. */
@NullMarked
package slipday.finding;

import org.jspecify.annotations.NullMarked;
