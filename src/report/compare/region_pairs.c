#include "report/compare/region_pairs.h"
#include "base/groups.h"
#include "base/hash.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>
#include <string.h>

static bool is_free(const struct region_pairs *pairs, int old, int new)
{
	return pairs->new_of[old] == NO_REGION && pairs->old_of[new] == NO_REGION;
}

static void join(struct region_pairs *pairs, int old, int new)
{
	pairs->new_of[old] = new;
	pairs->old_of[new] = old;
}

/* ---- By what they are like ------------------------------------------------------------------- */

/* A region of either survey. */
struct one {
	const struct survey *survey;
	int region;
};

static const struct region *region_of(const struct one *one)
{
	return &one->survey->regions[one->region];
}

static bool are_named_alike(const void *a, const void *b, const void *context)
{
	const struct one *one = a, *two = b;

	(void)context;
	return region_of(one)->entry->class == region_of(two)->entry->class &&
		strcmp(survey_own_name(one->survey, one->region),
			survey_own_name(two->survey, two->region)) == 0;
}

static uint64_t hash_name(const void *item, const void *context)
{
	const struct one *one = item;
	const char *name = survey_own_name(one->survey, one->region);

	(void)context;
	return hash_bytes(HASH_EMPTY, name, strlen(name));
}

/* Letter and shape; of cells of another size the letter. */
struct look {
	int letter, cells, perimeter, convex, reflex, width, height;
};

static struct look look_of(const struct one *one, bool has_shape)
{
	const struct region *region = region_of(one);

	if (!has_shape)
		return (struct look){ .letter = region->entry->letter };
	return (struct look){ region->entry->letter, region->cells, region->perimeter,
		region->convex, region->reflex, region->most.x - region->left,
		region->most.y - region->first_cell.y };
}

static bool look_alike(const void *a, const void *b, const void *context)
{
	struct look one = look_of(a, *(const bool *)context);
	struct look two = look_of(b, *(const bool *)context);

	return memcmp(&one, &two, sizeof one) == 0;
}

static uint64_t hash_look(const void *item, const void *context)
{
	struct look look = look_of(item, *(const bool *)context);

	return hash_bytes(HASH_EMPTY, &look, sizeof look);
}

/* Joins those of a list, first the old and then the new, that are alike. */
static void join_alike(struct region_pairs *pairs, const struct one *list, int old_count, int count,
	const struct alike *alike)
{
	struct groups groups = groups_make(list, count, sizeof *list, alike);
	int *partners = groups_partners(&groups, old_count);

	for (int i = 0; i < old_count && i < groups.item_count && !stop_asked(); i++)
		if (partners[i] != NO_PARTNER)
			join(pairs, list[i].region, list[partners[i]].region);
	free(partners);
	groups_fini(&groups);
}

static void join_named(struct region_pairs *pairs)
{
	const struct survey *old = pairs->old, *new = pairs->new;
	int count = old->name_count + new->name_count;
	struct one *list = memory_new((size_t)count, sizeof *list);

	for (int i = 0; i < count; i++)
		list[i] = i < old->name_count ? (struct one){ old, old->names[i].region } :
			(struct one){ new, new->names[i - old->name_count].region };
	join_alike(pairs, list, old->name_count, count,
		&(struct alike){ are_named_alike, hash_name, NULL });
	free(list);
}

static void join_left(struct region_pairs *pairs)
{
	const struct survey *old = pairs->old, *new = pairs->new;
	struct one *list = memory_new((size_t)(old->region_count + new->region_count),
		sizeof *list);
	bool has_shape = old->cell == new->cell;
	int count = 0, old_count;

	for (int i = 0; i < old->region_count && !stop_asked(); i++)
		if (pairs->new_of[i] == NO_REGION)
			list[count++] = (struct one){ old, i };
	old_count = count;
	for (int i = 0; i < new->region_count && !stop_asked(); i++)
		if (pairs->old_of[i] == NO_REGION)
			list[count++] = (struct one){ new, i };
	join_alike(pairs, list, old_count, count,
		&(struct alike){ look_alike, hash_look, &has_shape });
	free(list);
}

/* ---- By the ground they share ---------------------------------------------------------------- */

/* How far the old plan lies to the right of the new one's left edge and below its top. */
struct shift {
	int x, y;
};

struct overlap {
	int old, new, cells;
};

struct overlaps {
	struct overlap *list;
	size_t count, capacity;
	int64_t cells; /* of all */
	bool is_kept;  /* the list is; else only the cells are counted */
};

static void overlap_add(struct overlaps *overlaps, const struct overlap *overlap)
{
	struct overlap *last = overlaps->count ? &overlaps->list[overlaps->count - 1] : NULL;

	overlaps->cells += overlap->cells;
	if (!overlaps->is_kept)
		return;
	if (last && last->old == overlap->old && last->new == overlap->new) {
		last->cells += overlap->cells;
		return;
	}
	overlaps->list = memory_grow(overlaps->list, overlaps->count, &overlaps->capacity,
		sizeof *overlaps->list);
	overlaps->list[overlaps->count++] = *overlap;
}

static void overlap_rows(struct overlaps *overlaps, const struct region_pairs *pairs, int old_row,
	int new_row, int x)
{
	const struct survey *old = pairs->old, *new = pairs->new;
	size_t i = old->row_runs[old_row], j = new->row_runs[new_row];

	while (i < old->row_runs[old_row + 1] && j < new->row_runs[new_row + 1]) {
		const struct run *a = &old->runs[i], *b = &new->runs[j];
		int right = least(a->right + x, b->right);
		int cells = right - most(a->left + x, b->left);

		if (cells > 0 && a->region != NO_REGION && b->region != NO_REGION &&
			a->class == b->class)
			overlap_add(overlaps, &(struct overlap){ a->region, b->region, cells });
		i += a->right + x == right;
		j += b->right == right;
	}
}

static void overlap_plans(struct overlaps *overlaps, const struct region_pairs *pairs,
	struct shift shift)
{
	for (int y = most(0, shift.y); y < pairs->new->rows && y - shift.y < pairs->old->rows &&
		!stop_asked(); y++)
		overlap_rows(overlaps, pairs, y - shift.y, y, shift.x);
}

/* That at which they share most cells: a plan may have grown, or been cropped, at any side or at
 * two that are opposite. */
static struct shift best_shift(const struct region_pairs *pairs)
{
	int across = pairs->new->columns - pairs->old->columns;
	int down = pairs->new->rows - pairs->old->rows;
	const int xs[] = { 0, across / 2, across }, ys[] = { 0, down / 2, down };
	struct shift best = { 0, 0 };
	int64_t most_cells = -1;

	for (int i = 0; i < 3; i++) {
		for (int j = 0; j < 3; j++) {
			struct overlaps overlaps = { .is_kept = false };

			if ((i > 0 && xs[i] == xs[i - 1]) || (j > 0 && ys[j] == ys[j - 1]))
				continue;
			overlap_plans(&overlaps, pairs, (struct shift){ xs[i], ys[j] });
			if (overlaps.cells > most_cells) {
				most_cells = overlaps.cells;
				best = (struct shift){ xs[i], ys[j] };
			}
		}
	}
	return best;
}

static int by_regions(const void *a, const void *b)
{
	const struct overlap *one = a, *two = b;

	return one->old != two->old ? compare(one->old, two->old) : compare(one->new, two->new);
}

/* The largest first. Of two that share a region and as much ground, never both of one sum: so it is
 * the same whichever plan is the old one. */
static int by_size(const void *a, const void *b)
{
	const struct overlap *one = a, *two = b;

	return one->cells != two->cells ? compare(two->cells, one->cells) :
		compare(one->old + one->new, two->old + two->new);
}

/* The cells of two regions all in one. */
static void overlaps_sum(struct overlaps *overlaps)
{
	size_t kept = 0;

	sort(overlaps->list, overlaps->count, sizeof *overlaps->list, by_regions);
	for (size_t i = 0; i < overlaps->count && !stop_asked(); i++) {
		if (kept > 0 && by_regions(&overlaps->list[kept - 1], &overlaps->list[i]) == 0)
			overlaps->list[kept - 1].cells += overlaps->list[i].cells;
		else
			overlaps->list[kept++] = overlaps->list[i];
	}
	overlaps->count = kept;
}

static void join_sharing(struct region_pairs *pairs)
{
	struct overlaps overlaps = { .is_kept = true };

	overlap_plans(&overlaps, pairs, best_shift(pairs));
	overlaps_sum(&overlaps);
	sort(overlaps.list, overlaps.count, sizeof *overlaps.list, by_size);
	for (size_t i = 0; i < overlaps.count && !stop_asked(); i++) {
		const struct overlap *overlap = &overlaps.list[i];

		if (is_free(pairs, overlap->old, overlap->new))
			join(pairs, overlap->old, overlap->new);
		if (pairs->old_of[overlap->new] == overlap->old)
			pairs->shared[overlap->new] = overlap->cells;
	}
	free(overlaps.list);
}

/* ---- All of it ------------------------------------------------------------------------------- */

static int *of_none(struct arena *arena, int count)
{
	int *list = arena_new(arena, (size_t)count, sizeof *list);

	for (int i = 0; i < count; i++)
		list[i] = NO_REGION;
	return list;
}

void region_pairs_find(struct region_pairs *out, struct arena *arena, const struct survey *old,
	const struct survey *new)
{
	*out = (struct region_pairs){ .old = old, .new = new,
		.new_of = of_none(arena, old->region_count),
		.old_of = of_none(arena, new->region_count),
		.shared = arena_new(arena, (size_t)new->region_count, sizeof *out->shared) };
	join_named(out);
	if (old->cell == new->cell)
		join_sharing(out);
	join_left(out);
}

static bool are_called_alike(const char *a, const char *b)
{
	return a && b ? strcmp(a, b) == 0 : a == b;
}

static bool covers_other_ground(const struct region_pairs *pairs, int old, int new)
{
	const struct survey *before = pairs->old, *now = pairs->new;
	const struct region *a = &before->regions[old], *b = &now->regions[new];

	if (before->cell != now->cell)
		return a->perimeter * before->cell != b->perimeter * now->cell ||
			survey_area(a->cells, before->cell) != survey_area(b->cells, now->cell);
	return a->cells != b->cells || pairs->shared[new] != a->cells;
}

enum region_change region_change(const struct region_pairs *pairs, int new)
{
	const struct survey *before = pairs->old, *now = pairs->new;
	int old = pairs->old_of[new];

	if (old == NO_REGION)
		return REGION_CAME;
	if (before->regions[old].entry->letter != now->regions[new].entry->letter ||
		!are_called_alike(survey_own_name(before, old), survey_own_name(now, new)) ||
		covers_other_ground(pairs, old, new))
		return REGION_CHANGED;
	return before->regions[old].number != now->regions[new].number ? REGION_RENUMBERED :
		REGION_SAME;
}
