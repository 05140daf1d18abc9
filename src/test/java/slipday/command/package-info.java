/** Tests of the command line, end to end. */
@NullMarked
package slipday.command;

import org.jspecify.annotations.NullMarked;
