@NullMarked
package slipday.editor;

import org.jspecify.annotations.NullMarked;
