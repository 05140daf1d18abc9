/** What tests of every package share: case folders and golden files. */
@NullMarked
package slipday.testing;

import org.jspecify.annotations.NullMarked;
