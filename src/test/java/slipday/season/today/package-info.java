/** Tests of what there is to do on one day. */
@NullMarked
package slipday.season.today;

import org.jspecify.annotations.NullMarked;
