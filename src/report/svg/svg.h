/* The plan drawn to scale for print, as SVG: with what is on it and around it, a list of signs, a
 * title block, and sections of the walls, on sheets of paper. */
#ifndef REPORT_SVG_SVG_H
#define REPORT_SVG_SVG_H

#include "report/svg/layout.h"

/* Whether a drawing can be made as asked; *why gets a sentence where it cannot. Pure; it can be
 * stopped. */
bool svg_fits(const struct plot *plot, const struct takeoff *takeoff, const struct svg_asked *asked,
	struct text *why);
/* How many sheets it takes; it must be one that can be made. */
int svg_sheets(const struct plot *plot, const struct takeoff *takeoff,
	const struct svg_asked *asked);
/* Prints the sheet asked for, of a drawing that can be made. It begins with FIRST_LINE_DRAWING
 * (report/words/first_line.h). name: the plot file's. Pure; it can be stopped. */
void report_svg(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name, const struct svg_asked *asked);

#endif
