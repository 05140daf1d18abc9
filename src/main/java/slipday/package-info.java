/**
 * Slipday: the season of a seed-saving garden, from a text to its dates, crossings and chores.
 *
 * <p>Floors, from the ground up; a package imports only from floors below its own (a test holds
 * it):
 *
 * <pre>
 * 0  source    files, spans, line map          finding   level, labels, finding, outcome, nearest words
 *    measure   quantities, ranges, odds, reasons  caution   what can hurt someone, in one place's words
 * 1  syntax    lines and words with exact places (ANTLR behind one facade)
 *    genetics  pure mathematics of chance and inheritance: no dates, no text
 * 2  language  the one table of clauses, their shapes, and the binding of lines to it
 *    climate   weather records, frost, degree-days, soil, sun
 * 3  format    canonical layout
 *    garden    site, beds, crops, lines, lots, plantings, crosses; the resolver from text to model
 * 4  season    a planting through the weather years, dates chosen, bloom, crossing, hand pollination
 *    descent   ancestors of a plant, fruit or lot out of plan and record; inbreeding, coancestry
 *    seed      seed in hand: what is left, how good it still is, how much to sow
 *    choice    candidates for the next generation: measured, corrected, valued, ranked
 *    storage   fruit in store: how it keeps, when it is best eaten
 *    odds      how many to grow, sow, pollinate and keep; counts against ratios
 *    nextseason  next season's plantings out of this season's lots, record and beds
 * 5  rules     one class a rule; reporter, catalogue, checker, allowances
 *    change    what differs between two states of a plan
 * 6  output    findings, tables, calendar, data: outputs never compute
 * 7  app       the one pipeline: load, parse, resolve, season, check
 * 8  command   the door                      editor    the language server, the other door
 * </pre>
 */
@NullMarked
package slipday;

import org.jspecify.annotations.NullMarked;
