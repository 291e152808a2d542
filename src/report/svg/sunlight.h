/* Hours of sun on a plan to scale, where they are asked for: a pattern for each class (sun_hours.h)
 * in place of the ground's own, closer lines for less sun, in black in any colours. */
#ifndef REPORT_SVG_SUNLIGHT_H
#define REPORT_SVG_SUNLIGHT_H

#include "report/svg/remarks.h"

/* The patterns of classes, for the list of signs and the plan. */
void sunlight_define(const struct sheet *sheet);
/* The classes of the usual days over the ground. It can be stopped. */
void sunlight_draw(struct sheet *sheet);
/* The sign of a class in a box: remark->index. */
void sunlight_sign(const struct sheet *sheet, struct box box, int class);
/* What patterns cannot tell: what days are meant, and what is taken for granted. */
const char *sunlight_words(const struct report *report);

/* Whether ground of a class keeps its own pattern: fixtures do, which have no hours. */
bool sunlight_spares(const struct svg_asked *asked, enum plot_class class);

#endif
