/** Fruit in store: how long it has lain, how it keeps by line, when it is best eaten. */
@NullMarked
package slipday.storage;

import org.jspecify.annotations.NullMarked;
