/**
 * What is known of a season, as people and programs read it: text, tables, data, findings. Outputs
 * show values; they never compute them.
 */
@NullMarked
package slipday.output;

import org.jspecify.annotations.NullMarked;
