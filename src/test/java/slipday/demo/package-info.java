/** What the example garden is made of, where a program made it. */
@NullMarked
package slipday.demo;

import org.jspecify.annotations.NullMarked;
