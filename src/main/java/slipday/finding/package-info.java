/** What is said about a plan: findings with their places, levels and mends. */
@NullMarked
package slipday.finding;

import org.jspecify.annotations.NullMarked;
