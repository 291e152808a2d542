/* What of a piece of paper is taken, so that words do not stand on each other. */
#ifndef REPORT_SVG_ROOM_H
#define REPORT_SVG_ROOM_H

#include "base/memory.h"
#include "report/svg/paper.h"

struct room {
	struct box within;
	int columns, rows; /* of small squares */
	unsigned char *taken;
};

/* All of it free; in the arena. */
struct room room_of(struct box within, struct arena *arena);
/* Within, and none of it taken. */
bool room_is_free(const struct room *room, struct box box);
/* What of it is within. */
void room_take(struct room *room, struct box box);

#endif
