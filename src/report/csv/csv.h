/* The items of the takeoff for a spreadsheet: comma-separated values, see csv_record.h, in UTF-8
 * without a byte order mark. */
#ifndef REPORT_CSV_CSV_H
#define REPORT_CSV_CSV_H

#include "report/words/report.h"

/* Prints a row of the columns' names, then a row for each item; where it is bought in packs of
 * several kinds, one for each kind, of which the first alone has the quantities; then a row for
 * what each supplier brings on each day. So each column of numbers may be summed: costs come to
 * the total, weights to the weight of all that is known. Where beds are not laid out, the first row
 * says so.
 *
 * Numbers have a point, at most 6 places, no separators of thousands, no exponent. Quantities are
 * in the unit that the text has them in, named in its own column and the same all along a row;
 * weights are in one unit all through. What is not known, or has no price, is empty.
 *
 * Texts are as typed, also where they begin with =, +, - or @, which a spreadsheet may take for a
 * formula. No quoting prevents that, and a sign put before them would change the text for every
 * other reader, and no longer be the name that the plot or the price book has. Pure. */
void report_csv(struct sink *out, const struct plot *plot, const struct takeoff *takeoff);

#endif
