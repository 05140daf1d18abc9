/** The language server: the same pipeline and the same table of clauses, for any editor. */
@NullMarked
package slipday.editor;

import org.jspecify.annotations.NullMarked;
