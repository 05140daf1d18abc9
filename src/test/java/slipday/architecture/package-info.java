/** The house rules, held over the classes and the texts of the whole project. */
@NullMarked
package slipday.architecture;

import org.jspecify.annotations.NullMarked;
