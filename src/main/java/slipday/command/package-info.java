/** The door: the command line, its words, streams and exit codes. */
@NullMarked
package slipday.command;

import org.jspecify.annotations.NullMarked;
