#include "takeoff/advice/proposal.h"
#include "base/number.h"
#include "plot/edit/lay.h"

/* A bed while one side of it after another is moved. */
struct moving {
	struct plot *plot;
	struct mirror mirror;
	char letter;
	struct rectangle bed;
};

static bool is_all(const struct plot *plot, struct rectangle r, char letter)
{
	for (int y = r.top; y <= r.bottom; y++)
		for (int x = r.left; x <= r.right; x++)
			if (ground_cell(&plot->ground, x, y) != letter)
				return false;
	return true;
}

static bool has_any(const struct plot *plot, struct rectangle r, char letter)
{
	struct rectangle in = rectangle_within(r, &plot->ground);

	for (int y = in.top; y <= in.bottom; y++)
		for (int x = in.left; x <= in.right; x++)
			if (ground_cell(&plot->ground, x, y) == letter)
				return true;
	return false;
}

static bool is_within(const struct ground *ground, struct rectangle r)
{
	return r.left >= 0 && r.top >= 0 && r.right < ground->columns && r.bottom < ground->rows;
}

/* Whether a rectangle of the plan is just one region of the letter. */
static bool stands_alone(const struct plot *plot, struct rectangle r, char letter)
{
	const struct rectangle beside[] = {
		{ r.left, r.top - 1, r.right, r.top - 1 },
		{ r.left, r.bottom + 1, r.right, r.bottom + 1 },
		{ r.left - 1, r.top, r.left - 1, r.bottom },
		{ r.right + 1, r.top, r.right + 1, r.bottom },
	};
	bool alone = is_within(&plot->ground, r) && is_all(plot, r, letter);

	for (size_t i = 0; i < sizeof beside / sizeof *beside; i++)
		alone = alone && !has_any(plot, beside[i], letter);
	return alone;
}

/* Whether the bed and all its images do so; an image may lie outside of the plan as a whole. */
static bool all_stand_alone(const struct moving *moving, struct rectangle bed)
{
	struct rectangle images[IMAGES_MOST];
	int count = mirror_rectangles(&moving->mirror, bed, images);
	bool alone = true;

	for (int i = 0; i < count && alone; i++) {
		struct rectangle in = rectangle_within(images[i], &moving->plot->ground);

		alone = in.left > in.right || in.top > in.bottom ||
			stands_alone(moving->plot, images[i], moving->letter);
	}
	return alone;
}

/* Lays the bed over a strip; of a bed that is its own image it may lie there by now. */
static bool take(struct moving *moving, struct rectangle strip)
{
	struct rectangle images[IMAGES_MOST];
	int count = mirror_rectangles(&moving->mirror, strip, images);
	struct laid laid = { 0, false };

	if (is_all(moving->plot, strip, moving->letter))
		return true;
	for (int i = 0; i < count; i++)
		if (!ground_is_free(moving->plot, images[i]))
			return false;
	lay_piece(moving->plot, &moving->mirror, strip, moving->letter, &laid);
	return true;
}

/* Lays a strip with what lies beyond it: `beyond` is the column, or row. */
static bool give_up(struct moving *moving, struct rectangle strip, int beyond, bool is_level)
{
	const struct ground *ground = &moving->plot->ground;
	int first = is_level ? strip.left : strip.top, last = is_level ? strip.right : strip.bottom;
	struct laid laid = { 0, false };

	if (!is_all(moving->plot, strip, moving->letter))
		return true;
	for (int i = first; i <= last; i++) {
		struct place at = is_level ? (struct place){ i, beyond } :
			(struct place){ beyond, i };
		struct rectangle piece = is_level ?
			(struct rectangle){ i, strip.top, i, strip.bottom } :
			(struct rectangle){ strip.left, i, strip.right, i };

		if (!ground_is_free(moving->plot, (struct rectangle){ at.x, at.y, at.x, at.y }))
			return false;
		lay_piece(moving->plot, &moving->mirror, piece,
			ground_holds(ground, at.x, at.y) ? ground_cell(ground, at.x, at.y) :
			OPEN_GROUND, &laid);
	}
	return true;
}

/* Moves one edge of the bed where it is to move that way: outward (grows) or inward. is_low: its
 * left or top one. */
static bool move_edge(struct moving *moving, int to, bool is_level, bool is_low, bool grows)
{
	struct rectangle *bed = &moving->bed, strip = *bed;
	int *edge = is_level ? (is_low ? &bed->top : &bed->bottom) :
		(is_low ? &bed->left : &bed->right);
	int from = *edge, outward = is_low ? -1 : 1;
	int near = grows ? from + outward : to + outward, far = grows ? to : from;

	if (to == from || ((to - from) * outward > 0) != grows)
		return true;
	*edge = to;
	if (is_level) {
		strip.top = least(near, far);
		strip.bottom = most(near, far);
	} else {
		strip.left = least(near, far);
		strip.right = most(near, far);
	}
	return grows ? take(moving, strip) : give_up(moving, strip, from + outward, is_level);
}

static bool move_edges(struct moving *moving, struct rectangle to, bool grow)
{
	return move_edge(moving, to.left, false, true, grow) &&
		move_edge(moving, to.right, false, false, grow) &&
		move_edge(moving, to.top, true, true, grow) &&
		move_edge(moving, to.bottom, true, false, grow);
}

/* What is given up is given up first: else it would be so of what the bed has just taken. */
bool resize_bed(struct plot *plot, const struct proposal *proposal)
{
	struct moving moving = { plot, mirror_of(plot), proposal->letter, proposal->from };

	return is_within(&plot->ground, proposal->to) &&
		all_stand_alone(&moving, proposal->from) &&
		move_edges(&moving, proposal->to, false) &&
		move_edges(&moving, proposal->to, true) &&
		all_stand_alone(&moving, proposal->to);
}
