/** Mixed models: records, what they are corrected for, and what is predicted from them. */
@NullMarked
package slipday.genetics.mixed;

import org.jspecify.annotations.NullMarked;
