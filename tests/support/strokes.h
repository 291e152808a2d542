/* What sessions have left of strokes: beds cell by cell from the plan's first on, and in the files
 * of a folder. */
#ifndef SUPPORT_STROKES_H
#define SUPPORT_STROKES_H

#include "plot/plot.h"

/* Its first cells, row by row, that are beds. */
int strokes_of(const struct plot *plot);

struct strokes {
	int saved;    /* in the plot */
	int offered;  /* at the next start, or saved: the most of both */
	int anywhere; /* the most that any file of the folder has, or is offered */
};
/* Fails the test where the plot cannot be read, or a file that was being written is left. */
void strokes_find(struct strokes *found, const char *folder, const char *plot);

#endif
