/** Tests of the pages. */
@NullMarked
package slipday.output.report;

import org.jspecify.annotations.NullMarked;
