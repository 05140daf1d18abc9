/** Tests of how many, and of counts against ratios. */
@NullMarked
package slipday.odds;

import org.jspecify.annotations.NullMarked;
