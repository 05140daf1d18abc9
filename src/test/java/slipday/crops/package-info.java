/** Checks of the crop facts that ship with Slipday against the publications they name. */
@NullMarked
package slipday.crops;

import org.jspecify.annotations.NullMarked;
