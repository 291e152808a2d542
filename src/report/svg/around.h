/* What is on a plot and around it besides its ground: houses, shade and what is kept, services,
 * where deliveries are put down, drip lines, the tap with its header, what places are tied to. What
 * lies beyond the field is cut off. */
#ifndef REPORT_SVG_AROUND_H
#define REPORT_SVG_AROUND_H

#include "report/svg/sheet.h"

/* Houses, below all else; all others; what they are. They can be stopped. */
void around_draw_houses(struct sheet *sheet);
void around_draw(struct sheet *sheet);
void around_write_names(struct sheet *sheet);

/* Takes the pen that services of a kind are drawn with, dashed for those that are to be laid; and
 * lifts it. */
void around_pen(const struct sheet *sheet, const struct service *service);
void around_lift(const struct sheet *sheet, const struct service *service);
/* The sign of a tap, so many from its middle to its edge. */
void around_tap_sign(const struct sheet *sheet, struct at at, nm half);
/* The sign of where deliveries are put down, its tip there: twice as high as half of its width. */
void around_drop_sign(const struct sheet *sheet, struct at tip, nm half);

#endif
