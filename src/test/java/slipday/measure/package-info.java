/** Tests of quantities and their words. */
@NullMarked
package slipday.measure;

import org.jspecify.annotations.NullMarked;
