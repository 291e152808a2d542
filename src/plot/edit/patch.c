#include "plot/edit/patch.h"
#include "base/memory.h"
#include "plot/edit/names.h"

#include <string.h>

static bool is_within(struct rectangle r, struct place at)
{
	return at.x >= r.left && at.x <= r.right && at.y >= r.top && at.y <= r.bottom;
}

struct patch patch_of(const struct plot *plot, struct rectangle r)
{
	const struct names *names = &plot->details.names;
	struct patch patch = { .names = NAMES_EMPTY };

	ground_init(&patch.ground, r.right - r.left + 1, r.bottom - r.top + 1);
	for (int y = 0; y < patch.ground.rows; y++)
		memcpy(ground_at(&patch.ground, 0, y), ground_at(&plot->ground, r.left, r.top + y),
			(size_t)patch.ground.columns);
	for (size_t i = 0; i < names->count; i++) {
		struct place at = names->items[i].at;

		if (is_within(r, at))
			names_add(&patch.names, (struct place){ at.x - r.left, at.y - r.top },
				memory_string(names->items[i].text));
	}
	return patch;
}

void patch_fini(struct patch *patch)
{
	ground_fini(&patch->ground);
	names_fini(&patch->names);
}

/* Makes the patch anew of so many cells, each of which goes where `to` says in the old size. */
static void rearrange(struct patch *patch, int columns, int rows,
	struct place (*to)(const struct ground *old, struct place at))
{
	struct ground old = patch->ground;
	struct names *names = &patch->names;

	ground_init(&patch->ground, columns, rows);
	for (int y = 0; y < old.rows; y++)
		for (int x = 0; x < old.columns; x++) {
			struct place at = to(&old, (struct place){ x, y });

			*ground_at(&patch->ground, at.x, at.y) = *ground_at(&old, x, y);
		}
	for (size_t i = 0; i < names->count; i++)
		names->items[i].at = to(&old, names->items[i].at);
	ground_fini(&old);
}

static struct place turned(const struct ground *old, struct place at)
{
	return (struct place){ old->rows - 1 - at.y, at.x };
}

static struct place flipped_across(const struct ground *old, struct place at)
{
	return (struct place){ old->columns - 1 - at.x, at.y };
}

static struct place flipped_down(const struct ground *old, struct place at)
{
	return (struct place){ at.x, old->rows - 1 - at.y };
}

void patch_turn(struct patch *patch)
{
	rearrange(patch, patch->ground.rows, patch->ground.columns, turned);
}

void patch_flip(struct patch *patch, bool across)
{
	rearrange(patch, patch->ground.columns, patch->ground.rows,
		across ? flipped_across : flipped_down);
}

/* ---- Stamping -------------------------------------------------------------------------------- */

static void stamp_ground(struct plot *plot, const struct ground *patch, int x, int y,
	struct laid *laid)
{
	struct mirror mirror = mirror_of(plot);

	/* Those beside x, y come last, so that their letters stay. */
	for (int beside = 0; beside <= 1; beside++) {
		for (int row = 0; row < patch->rows; row++) {
			for (int column = 0; column < patch->columns; column++) {
				struct place at = { x + column, y + row };

				if (mirror_is_beside(&mirror, (struct place){ x, y }, at.x, at.y) ==
					(beside == 1))
					lay_cell(plot, &mirror, at,
						ground_cell(patch, column, row), laid);
			}
		}
	}
}

static bool is_uncovered(const void *how, struct place *at)
{
	return !is_within(*(const struct rectangle *)how, *at);
}

/* Whether the plot has the patch's names where they go, and no others there. */
static bool has_names(const struct plot *plot, const struct names *names, struct rectangle r)
{
	struct patch here = patch_of(plot, r);
	bool has_all = here.names.count == names->count;

	for (size_t i = 0; has_all && i < names->count; i++)
		has_all = place_equal(here.names.items[i].at, names->items[i].at) &&
			strcmp(here.names.items[i].text, names->items[i].text) == 0;
	patch_fini(&here);
	return has_all;
}

/* before: the ground as it was. Returns how many came. */
static int64_t stamp_names(struct plot *plot, struct ground *before, const struct names *names,
	struct rectangle r)
{
	struct rectangle in = rectangle_within(r, before);
	int64_t come = 0;

	if (in.left == r.left && in.top == r.top && in.right == r.right &&
		in.bottom == r.bottom && has_names(plot, names, r))
		return 0;
	names_move(&plot->details.names, before, is_uncovered, &r);
	for (size_t i = 0; i < names->count; i++) {
		struct place at = { r.left + names->items[i].at.x, r.top + names->items[i].at.y };

		if (!ground_holds(before, at.x, at.y))
			continue;
		names_add(&plot->details.names, at, memory_string(names->items[i].text));
		come++;
	}
	return come;
}

struct laid patch_stamp(struct plot *plot, const struct patch *patch, int x, int y)
{
	struct rectangle r = { x, y, x + patch->ground.columns - 1, y + patch->ground.rows - 1 };
	bool has_any = patch->names.count + plot->details.names.count > 0;
	struct ground before = { 0 };
	struct laid laid = { 0, false };

	if (has_any)
		before = ground_copy(&plot->ground);
	stamp_ground(plot, &patch->ground, x, y, &laid);
	if (has_any)
		laid.changed += stamp_names(plot, &before, &patch->names, r);
	ground_fini(&before);
	return laid;
}

struct laid patch_lift(struct plot *plot, struct rectangle r)
{
	struct names *names = &plot->details.names;
	struct laid laid = lay_rectangle(plot, r, OPEN_GROUND);

	for (size_t i = names->count; i-- > 0;)
		if (is_within(r, names->items[i].at)) {
			names_remove(names, i);
			laid.changed++;
		}
	return laid;
}
