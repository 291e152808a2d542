#ifndef SUPPORT_PIECES_H
#define SUPPORT_PIECES_H

/* The pieces of walls as rectangles on the ground, for tests. */

#include "support/beds.h"
#include "survey/image.h"

/* Nanometres from the upper left corner of the box round the bed. */
struct piece {
	nm left, top, right, bottom;
};

struct pieces_laid {
	struct piece *list; /* sorted */
	int count;
};

/* The pieces of one course of a bed's wall or cap, of blocks so deep. To be freed. */
struct pieces_laid pieces_laid(const struct beds *beds, int region,
	const struct wall_course *course, nm depth);
void pieces_free(struct pieces_laid *pieces);
/* Turns all pieces of a bed; sorted again. */
void pieces_turn(struct pieces_laid *pieces, const struct beds *beds, int region, enum turn turn);
bool pieces_equal(const struct pieces_laid *a, const struct pieces_laid *b);
/* True where a course stays as it is when the bed is turned. */
bool pieces_are_own_image(const struct beds *beds, int region, const struct wall_course *course,
	nm depth, enum turn turn);

#endif
