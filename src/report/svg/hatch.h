/* Patterns and colours of the ground: each class has a figure of its own, letters of a class differ
 * in how close it stands and how light their colour is. Figures are their own images, left for
 * right and top for bottom, and begin at the mirror's axes: mirrored ground looks mirrored. Of more
 * than HATCHES letters of one class the first look like later ones; ids and the list of grounds
 * tell them. */
#ifndef REPORT_SVG_HATCH_H
#define REPORT_SVG_HATCH_H

#include "report/svg/sheet.h"

enum { HATCHES = 6 };

/* Which of its class's letters with ground an entry is, from 0. */
int hatch_rank(const struct sheet *sheet, const struct entry *entry);
/* "#c8a27a": the colour of such ground, where the sheet has colours. */
const char *hatch_tint(const struct entry *entry, int rank);
/* A pattern for each letter that has ground, of the id "on-b", for shapes in cells from the datum;
 * and for swatches in the list, of the id "as-b". */
void hatch_define(const struct sheet *sheet);

#endif
