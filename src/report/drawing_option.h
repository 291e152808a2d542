/* What the command line asks of a drawing. */
#ifndef REPORT_DRAWING_OPTION_H
#define REPORT_DRAWING_OPTION_H

#include "report/svg/layout.h"

/* --paper, --turn, --scale, --sheet, --with, --plain; values over those of single letters. */
enum drawing_option { OPTION_PAPER = 256, OPTION_TURN, OPTION_SCALE, OPTION_SHEET, OPTION_WITH,
	OPTION_PLAIN, OPTION_BEYOND };

/* "--paper"; NULL where an option is none of them. */
const char *drawing_option_name(int option);
/* Takes one with what follows it. False where that is not understood; it has complained then. */
bool drawing_option_read(struct svg_asked *asked, enum drawing_option option, const char *word);

#endif
