/** Rules of the ground: room, overlap, and rotation. */
@NullMarked
package slipday.rules.bed;

import org.jspecify.annotations.NullMarked;
