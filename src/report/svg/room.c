#include "report/svg/room.h"
#include "base/number.h"

#include <string.h>

static const nm SQUARE = NM_PER_MM / 4;

struct room room_of(struct box within, struct arena *arena)
{
	struct room room = { .within = within,
		.columns = most((int)(box_width(within) / SQUARE), 0),
		.rows = most((int)(box_height(within) / SQUARE), 0) };

	room.taken = arena_new(arena, (size_t)room.columns * (size_t)room.rows + 1, 1);
	return room;
}

/* The squares that a box touches, those at its rim where it is in them at all; right and bottom
 * are the first beyond it. */
struct squares {
	int left, top, right, bottom;
};

static struct squares squares_of(const struct room *room, struct box box)
{
	const struct box *in = &room->within;

	return (struct squares){ held((box.left - in->left) / SQUARE, 0, room->columns),
		held((box.top - in->top) / SQUARE, 0, room->rows),
		held(quotient_up(box.right - in->left, SQUARE), 0, room->columns),
		held(quotient_up(box.bottom - in->top, SQUARE), 0, room->rows) };
}

bool room_is_free(const struct room *room, struct box box)
{
	struct squares on = squares_of(room, box);

	if (box.left < room->within.left || box.top < room->within.top ||
	    box.right > room->within.right || box.bottom > room->within.bottom)
		return false;
	for (int y = on.top; y < on.bottom; y++)
		if (memchr(room->taken + (size_t)y * (size_t)room->columns + on.left, 1,
			(size_t)(on.right - on.left)))
			return false;
	return true;
}

void room_take(struct room *room, struct box box)
{
	struct squares on = squares_of(room, box);

	for (int y = on.top; y < on.bottom; y++)
		if (on.right > on.left)
			memset(room->taken + (size_t)y * (size_t)room->columns + on.left, 1,
				(size_t)(on.right - on.left));
}
