#include "plot/edit/patch.h"
#include "base/memory.h"
#include "plot/edit/plants_move.h"

#include <stdlib.h>
#include <string.h>

/* Where a patch lies, or is to lie. */
struct lying {
	const struct ground *ground;
	int x, y;
};

/* Whether the patch has a letter there. */
static bool covers(const struct lying *lying, struct place at)
{
	int x = at.x - lying->x, y = at.y - lying->y;

	return ground_holds(lying->ground, x, y) &&
		ground_cell(lying->ground, x, y) != PATCH_NOTHING;
}

/* Adds those of the names that the patch covers, by its own cells. */
static void names_under(struct names *out, const struct names *names, const struct lying *lying)
{
	for (size_t i = 0; i < names->count; i++) {
		struct place at = names->items[i].at;

		if (covers(lying, at))
			names_add(out, (struct place){ at.x - lying->x, at.y - lying->y },
				memory_string(names->items[i].text));
	}
}

static bool under_way(const void *how, struct place *at)
{
	const struct lying *lying = how;
	bool is_covered = covers(lying, *at);

	at->x -= lying->x;
	at->y -= lying->y;
	return is_covered;
}

/* The patch takes along what is on its ground, the top left cell of which is at x, y. */
static void take_along(struct patch *patch, const struct plot *plot, int x, int y)
{
	const struct lying lying = { &patch->ground, x, y };

	names_under(&patch->names, &plot->details.names, &lying);
	patch->plants = plants_taken(&plot->details.plants, under_way, &lying);
}

struct patch patch_of(const struct plot *plot, struct rectangle r)
{
	struct patch patch = { .names = NAMES_EMPTY, .plants = PLANTS_NONE };

	ground_init(&patch.ground, r.right - r.left + 1, r.bottom - r.top + 1);
	for (int y = 0; y < patch.ground.rows; y++)
		memcpy(ground_at(&patch.ground, 0, y), ground_at(&plot->ground, r.left, r.top + y),
			(size_t)patch.ground.columns);
	take_along(&patch, plot, r.left, r.top);
	return patch;
}

struct patch patch_of_region(struct plot *plot, struct place at, struct rectangle *r)
{
	struct patch patch = { .names = NAMES_EMPTY, .plants = PLANTS_NONE };
	size_t count;
	struct rectangle *rows = lay_patch(&plot->ground, at, &count);

	*r = rows[0];
	for (size_t i = 1; i < count; i++)
		*r = rectangle_around(*r, rows[i]);
	ground_init(&patch.ground, r->right - r->left + 1, r->bottom - r->top + 1);
	memset(patch.ground.cells, PATCH_NOTHING, ground_count(&patch.ground));
	for (size_t i = 0; i < count; i++)
		memset(ground_at(&patch.ground, rows[i].left - r->left, rows[i].top - r->top),
			ground_cell(&plot->ground, at.x, at.y),
			(size_t)(rows[i].right - rows[i].left + 1));
	free(rows);
	take_along(&patch, plot, r->left, r->top);
	return patch;
}

void patch_fini(struct patch *patch)
{
	ground_fini(&patch->ground);
	names_fini(&patch->names);
	plants_fini(&patch->plants);
}

struct rearranged {
	const struct ground *old;
	struct place (*to)(const struct ground *old, struct place at);
};

static bool rearranged(const void *how, struct place *at)
{
	const struct rearranged *way = how;

	*at = way->to(way->old, *at);
	return true;
}

/* Makes the patch anew of so many cells, each of which goes where `to` says in the old size. */
static void rearrange(struct patch *patch, int columns, int rows,
	struct place (*to)(const struct ground *old, struct place at))
{
	struct ground old = patch->ground;
	const struct rearranged way = { &old, to };
	struct names *names = &patch->names;

	ground_init(&patch->ground, columns, rows);
	for (int y = 0; y < old.rows; y++)
		for (int x = 0; x < old.columns; x++) {
			struct place at = to(&old, (struct place){ x, y });

			*ground_at(&patch->ground, at.x, at.y) = *ground_at(&old, x, y);
		}
	for (size_t i = 0; i < names->count; i++)
		names->items[i].at = to(&old, names->items[i].at);
	specimens_move(&patch->plants, &patch->ground, rearranged, &way);
	drifts_move(&patch->plants, &old, rearranged, &way);
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

/* Those cells of the patch that are beside x, y, or those that are not. */
static void stamp_side(struct plot *plot, const struct lying *lying, bool is_beside,
	struct laid *laid)
{
	struct mirror mirror = mirror_of(plot);
	struct place corner = { lying->x, lying->y };

	for (int row = 0; row < lying->ground->rows; row++) {
		for (int column = 0; column < lying->ground->columns; column++) {
			struct place at = { lying->x + column, lying->y + row };

			if (covers(lying, at) &&
				mirror_is_beside(&mirror, corner, at.x, at.y) == is_beside)
				lay_cell(plot, &mirror, at,
					ground_cell(lying->ground, column, row), laid);
		}
	}
}

static bool is_uncovered(const void *how, struct place *at)
{
	return !covers(how, *at);
}

/* Whether the plot has these names where they go, and no others there. */
static bool has_names(const struct plot *plot, const struct names *names,
	const struct lying *lying)
{
	struct names here = NAMES_EMPTY;
	bool has_all;

	names_under(&here, &plot->details.names, lying);
	has_all = here.count == names->count;
	for (size_t i = 0; has_all && i < names->count; i++)
		has_all = place_equal(here.items[i].at, names->items[i].at) &&
			strcmp(here.items[i].text, names->items[i].text) == 0;
	names_fini(&here);
	return has_all;
}

/* before: the ground as it was. Returns how many came. */
static int64_t stamp_names(struct plot *plot, struct ground *before, const struct names *names,
	const struct lying *lying)
{
	int64_t come = 0;

	if (has_names(plot, names, lying))
		return 0;
	names_move(&plot->details.names, before, is_uncovered, lying);
	for (size_t i = 0; i < names->count; i++) {
		struct place at = { lying->x + names->items[i].at.x,
			lying->y + names->items[i].at.y };

		if (!ground_holds(before, at.x, at.y))
			continue;
		names_add(&plot->details.names, at, memory_string(names->items[i].text));
		come++;
	}
	return come;
}

struct stamped {
	const struct lying *lying;
	const struct mirror *mirror;
};

/* Whether it, or any image of it, is where the patch lies; of an image beside its corner alone, if
 * so asked. */
static bool has_covered(const struct stamped *stamped, struct place at, bool is_beside)
{
	const struct lying *lying = stamped->lying;
	const struct place corner = { lying->x, lying->y };
	struct place images[IMAGES_MOST];

	for (int n = mirror_cells(stamped->mirror, at.x, at.y, images); n > 0; n--) {
		struct place image = images[n - 1];

		if (covers(lying, image) && (!is_beside ||
			mirror_is_beside(stamped->mirror, corner, image.x, image.y)))
			return true;
	}
	return false;
}

static bool stays_planted(const void *how, struct place *at)
{
	return !has_covered(how, *at, false);
}

/* Where the patch meets its own image, what is beside its corner comes, as letters do. */
static bool comes_along(const void *how, struct place *at)
{
	const struct stamped *stamped = how;
	const struct lying *lying = stamped->lying;

	at->x += lying->x;
	at->y += lying->y;
	return mirror_is_beside(stamped->mirror, (struct place){ lying->x, lying->y }, at->x,
		at->y) || !has_covered(stamped, *at, true);
}

static int64_t stamp_plants(struct plot *plot, struct ground *before, const struct plants *plants,
	const struct lying *lying)
{
	struct mirror mirror = mirror_of(plot);
	const struct stamped stamped = { lying, &mirror };
	struct plants taken = plants_taken(plants, comes_along, &stamped);
	struct plants coming = plants_imaged(&taken, &mirror, &plot->ground);
	int64_t changed = plants_replace(plot,
		&(struct plants_change){ &coming, stays_planted, &stamped, before });

	plants_fini(&taken);
	plants_fini(&coming);
	return changed;
}

struct laid patch_stamp(struct plot *plot, const struct patch *patch, int x, int y)
{
	const struct lying lying = { &patch->ground, x, y };
	bool has_any = patch->names.count + plot->details.names.count +
		plot->details.plants.count > 0;
	struct ground before = { 0 };
	struct laid laid = { 0, false };

	if (has_any)
		before = ground_copy(&plot->ground);
	/* Those beside x, y come last, so that their letters stay. */
	stamp_side(plot, &lying, false, &laid);
	stamp_side(plot, &lying, true, &laid);
	if (has_any) {
		laid.changed += stamp_names(plot, &before, &patch->names, &lying);
		laid.changed += stamp_plants(plot, &before, &patch->plants, &lying);
	}
	ground_fini(&before);
	return laid;
}

struct laid patch_lift(struct plot *plot, const struct ground *shape, int x, int y)
{
	const struct lying lying = { shape, x, y };
	struct mirror mirror = mirror_of(plot);
	struct names *names = &plot->details.names;
	struct laid laid = { 0, false };

	for (int row = 0; row < shape->rows; row++)
		for (int column = 0; column < shape->columns; column++)
			if (ground_cell(shape, column, row) != PATCH_NOTHING)
				lay_cell(plot, &mirror, (struct place){ x + column, y + row },
					OPEN_GROUND, &laid);
	for (size_t i = names->count; i-- > 0;)
		if (covers(&lying, names->items[i].at)) {
			names_remove(names, i);
			laid.changed++;
		}
	laid.changed += plants_replace(plot, &(struct plants_change){ &PLANTS_NONE, stays_planted,
		&(struct stamped){ &lying, &mirror }, NULL });
	return laid;
}

struct laid patch_reletter(struct plot *plot, const struct ground *shape, int x, int y, char letter,
	char to)
{
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, false };

	for (int row = 0; row < shape->rows; row++)
		for (int column = 0; column < shape->columns; column++)
			if (ground_cell(shape, column, row) != PATCH_NOTHING &&
				ground_cell(&plot->ground, x + column, y + row) == letter)
				lay_cell(plot, &mirror, (struct place){ x + column, y + row }, to,
					&laid);
	return laid;
}
