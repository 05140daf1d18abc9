/**
 * The shapes that text, JSON and tables are written from, so that they can't disagree. Documented
 * field by field in docs/formats.md.
 */
@NullMarked
package slipday.output.data;

import org.jspecify.annotations.NullMarked;
