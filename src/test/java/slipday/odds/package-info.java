@NullMarked
package slipday.odds;

import org.jspecify.annotations.NullMarked;
