/* Watering on the plan to scale: drip lines with a dot for each emitter, the header within beds and
 * on its way from the tap, with its sleeves. */
#ifndef REPORT_SVG_DRIP_MARKS_H
#define REPORT_SVG_DRIP_MARKS_H

#include "report/svg/sheet.h"

/* It can be stopped. */
void drip_marks_draw(struct sheet *sheet);
/* A dot like one of theirs. */
void drip_marks_emitter(const struct sheet *sheet, struct at at);

#endif
