#include "takeoff/setout/marks.h"

struct setout_walk setout_along(const struct setout *setout, const struct setout_string *string)
{
	struct setout_walk walk = { .setout = setout, .string = string,
		.number = string->first_corner, .corners_left = string->corner_count };

	if (walk.corners_left > 0)
		walk.line = grid_line_begin(setout->survey,
			(int)(string->at / setout->survey->cell));
	return walk;
}

/* The corner that is next, where one is left; the line then stays on it. */
static bool see_corner(struct setout_walk *walk, struct setout_point *corner)
{
	int around[AROUND];

	if (walk->corners_left == 0)
		return false;
	for (;;) {
		grid_line_around(&walk->line, around);
		corner->region_count = corner_regions(around, corner->regions);
		if (corner->region_count > 0)
			break;
		grid_line_next(&walk->line);
	}
	corner->kind = SETOUT_CORNER;
	corner->number = walk->number;
	corner->at = corner->to = (struct spot){ walk->line.x * walk->setout->survey->cell,
		walk->string->at };
	return true;
}

static bool see_post(const struct setout_walk *walk, struct setout_point *post)
{
	if (walk->post == walk->string->post_count)
		return false;
	*post = (struct setout_point){ .kind = SETOUT_POST,
		.mark = walk->string->posts[walk->post] };
	post->at = post->to = mark_post(walk->setout, post->mark);
	return true;
}

static bool see_gate(const struct setout_walk *walk, struct setout_point *gate)
{
	if (walk->gate == walk->string->gate_count)
		return false;
	*gate = (struct setout_point){ .kind = SETOUT_GATE,
		.mark = walk->string->gates[walk->gate] };
	gate->at = mark_gate(walk->setout, gate->mark, &gate->to);
	return true;
}

static bool is_before(const struct setout_string *string, const struct setout_point *a,
	const struct setout_point *b)
{
	return string->is_upright ? a->at.y < b->at.y : a->at.x < b->at.x;
}

static void pass(struct setout_walk *walk, enum setout_kind kind)
{
	switch (kind) {
	case SETOUT_CORNER:
		walk->number++;
		walk->corners_left--;
		grid_line_next(&walk->line);
		break;
	case SETOUT_POST:
		walk->post++;
		break;
	case SETOUT_GATE:
		walk->gate++;
		break;
	}
}

bool setout_next(struct setout_walk *walk, struct setout_point *point)
{
	struct setout_point seen;
	bool is_any = see_corner(walk, point);

	if (see_post(walk, &seen) && (!is_any || is_before(walk->string, &seen, point))) {
		*point = seen;
		is_any = true;
	}
	if (see_gate(walk, &seen) && (!is_any || is_before(walk->string, &seen, point))) {
		*point = seen;
		is_any = true;
	}
	if (is_any)
		pass(walk, point->kind);
	return is_any;
}
