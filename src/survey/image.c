#include "survey/image.h"
#include "base/number.h"
#include "base/stop.h"

#include <limits.h>

/* Where a step to the right and a step down go to. */
struct steps {
	struct place right, down;
};

static const struct steps turned[TURNS] = {
	[TURN_NONE] = { { 1, 0 }, { 0, 1 } },
	[TURN_LEFT_RIGHT] = { { -1, 0 }, { 0, 1 } },
	[TURN_TOP_BOTTOM] = { { 1, 0 }, { 0, -1 } },
	[TURN_HALF] = { { -1, 0 }, { 0, -1 } },
	[TURN_QUARTER] = { { 0, 1 }, { -1, 0 } },
	[TURN_QUARTER_BACK] = { { 0, -1 }, { 1, 0 } },
	[TURN_FALLING] = { { 0, 1 }, { 1, 0 } },
	[TURN_RISING] = { { 0, -1 }, { -1, 0 } },
};

static struct place turn_step(enum turn turn, struct place step)
{
	const struct steps *to = &turned[turn];

	return (struct place){ step.x * to->right.x + step.y * to->down.x,
		step.x * to->right.y + step.y * to->down.y };
}

bool turn_is_flip(enum turn turn)
{
	const struct steps *to = &turned[turn];

	return to->right.x * to->down.y - to->right.y * to->down.x < 0;
}

enum turn turn_then(enum turn first, enum turn next)
{
	struct place right = turn_step(next, turned[first].right);
	struct place down = turn_step(next, turned[first].down);

	for (int turn = 0; turn < TURNS; turn++)
		if (place_equal(turned[turn].right, right) && place_equal(turned[turn].down, down))
			return (enum turn)turn;
	return TURN_NONE;
}

/* ---- Outlines -------------------------------------------------------------------------------- */

/* Brings corners of the one outline to where they lie on the other. */
struct mover {
	enum turn turn;
	struct place shift;
};

static struct place moved(const struct mover *mover, const struct corner *corner)
{
	struct place at = turn_step(mover->turn, (struct place){ corner->x, corner->y });

	return (struct place){ at.x + mover->shift.x, at.y + mover->shift.y };
}

/* The upper left corner of the box round the outer loop, moved. */
static struct place box_corner(const struct outline *outline, const struct mover *mover)
{
	const struct loop *outer = &outline->loops[0];
	struct place corner = { INT_MAX, INT_MAX };

	for (int i = 0; i < outer->count; i++) {
		struct place at = moved(mover, &outer->corners[i]);

		corner = (struct place){ least(corner.x, at.x), least(corner.y, at.y) };
	}
	return corner;
}

static struct mover mover_to(const struct outline *outline, const struct outline *other,
	enum turn turn)
{
	struct mover mover = { turn, { 0, 0 } }, none = { TURN_NONE, { 0, 0 } };
	struct place from = box_corner(outline, &mover), to = box_corner(other, &none);

	mover.shift = (struct place){ to.x - from.x, to.y - from.y };
	return mover;
}

/* The corner that is the loop's topmost, then leftmost, once it is moved: there each loop
 * starts. */
static int start_of(const struct loop *loop, const struct mover *mover, struct place *start)
{
	int first = 0;

	*start = moved(mover, &loop->corners[0]);
	for (int i = 1; i < loop->count; i++) {
		struct place at = moved(mover, &loop->corners[i]);

		if (place_order(at, *start) < 0) {
			first = i;
			*start = at;
		}
	}
	return first;
}

/* The hole that starts at a place: they are in reading order of it. -1 where none does. */
static int hole_at(const struct outline *outline, struct place start)
{
	int from = 1, end = outline->count;

	while (from < end) {
		int middle = from + (end - from) / 2;
		const struct corner *first = &outline->loops[middle].corners[0];
		int order = place_order((struct place){ first->x, first->y }, start);

		if (order == 0)
			return middle;
		if (order < 0)
			from = middle + 1;
		else
			end = middle;
	}
	return -1;
}

/* True where the loop, moved, is the other one, its corner `start` at that one's first. */
static bool is_moved_to(const struct loop *loop, const struct mover *mover, int start,
	const struct loop *other)
{
	int step = turn_is_flip(mover->turn) ? loop->count - 1 : 1, at = start;

	if (loop->count != other->count || loop->perimeter != other->perimeter)
		return false;
	for (int i = 0; i < loop->count; i++, at = (at + step) % loop->count) {
		struct place here = { other->corners[i].x, other->corners[i].y };

		if (!place_equal(moved(mover, &loop->corners[at]), here))
			return false;
	}
	return true;
}

bool image_find(struct image *out, struct arena *arena, const struct outline *outline,
	const struct outline *other, enum turn turn)
{
	struct mover mover = mover_to(outline, other, turn);
	struct loop_image *loops;

	if (outline->count != other->count)
		return false;
	loops = arena_new(arena, (size_t)outline->count, sizeof *loops);
	for (int i = 0; i < outline->count && !stop_asked(); i++) {
		const struct loop *loop = &outline->loops[i];
		struct place at;
		int start = start_of(loop, &mover, &at), found = i == 0 ? 0 : hole_at(other, at);

		if (found < 0 || !is_moved_to(loop, &mover, start, &other->loops[found]))
			return false;
		loops[i].loop = found;
		loops[i].first = turn_is_flip(turn) ? start + loop->count - 1 : loop->count - start;
		loops[i].first %= loop->count;
	}
	*out = (struct image){ turn, loops };
	return true;
}

int image_side(const struct image *image, int loop, int side, int sides)
{
	int first = image->loops[loop].first;

	return (turn_is_flip(image->turn) ? first - side + sides : first + side) % sides;
}

int image_corner(const struct image *image, int loop, int corner, int sides)
{
	int side = image_side(image, loop, corner, sides);

	/* Walked the other way round, the side ends where it began. */
	return turn_is_flip(image->turn) ? (side + 1) % sides : side;
}
