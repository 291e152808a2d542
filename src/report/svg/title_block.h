/* The title block along the foot of a sheet: what it is of, its scale and sheet, lines for the
 * address and the date, what the figures are good for. */
#ifndef REPORT_SVG_TITLE_BLOCK_H
#define REPORT_SVG_TITLE_BLOCK_H

#include "report/svg/sheet.h"

void title_block_draw(struct sheet *sheet);

#endif
