#include "takeoff/common/snags.h"
#include "base/hash.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>
#include <string.h>

/* The same figures as one gave lately, or a copy. */
static const nm *shared(struct snag_list *list, const nm figures[static SNAG_FIGURES])
{
	enum { BYTES = SNAG_FIGURES * sizeof *figures };
	const nm **lately = &list->lately[hash_bytes(HASH_EMPTY, figures, BYTES) % SNAG_SLOTS];

	if (!*lately || memcmp(*lately, figures, BYTES) != 0)
		*lately = memcpy(arena_new(list->arena, SNAG_FIGURES, sizeof *figures), figures,
			BYTES);
	return *lately;
}

struct snag *snag_add(struct snag_list *list, enum snag_code code, int region,
	const nm figures[static SNAG_FIGURES])
{
	struct snag *snag;

	list->list = arena_grow(list->arena, list->list, list->count, &list->capacity,
		sizeof *list->list);
	snag = &list->list[list->count++];
	*snag = (struct snag){ .code = code, .fence = NO_FENCE, .region = region, .loop = -1,
		.side = -1, .figures = shared(list, figures) };
	if (region != NO_REGION) {
		const struct region *r = &list->survey->regions[region];

		snag_put_around(snag, r->first_cell, (struct rectangle){ r->left, r->first_cell.y,
			r->most.x, r->most.y });
	}
	return snag;
}

static struct snag_box box_from(struct rectangle cells)
{
	return (struct snag_box){ (int16_t)cells.left, (int16_t)cells.top, (int16_t)cells.right,
		(int16_t)cells.bottom };
}

void snag_put(struct snag *snag, struct place cell)
{
	snag_put_around(snag, cell, (struct rectangle){ cell.x, cell.y, cell.x, cell.y });
}

void snag_put_around(struct snag *snag, struct place first, struct rectangle cells)
{
	snag->cell = first;
	snag->box = box_from(cells);
}

void snags_of_fence(struct snag_list *list, size_t from, int fence)
{
	for (size_t i = from; i < list->count && !stop_asked(); i++)
		list->list[i].fence = fence <= INT16_MAX ? (int16_t)fence : NO_FENCE;
}

static struct rectangle box_of(const struct snag *snag)
{
	return (struct rectangle){ snag->box.left, snag->box.top, snag->box.right,
		snag->box.bottom };
}

void snags_repeat(struct snag_list *list, size_t from, size_t count, int region)
{
	const struct region *here = &list->survey->regions[region];

	for (size_t i = 0; i < count; i++) {
		struct snag again = list->list[from + i];
		const struct region *there = &list->survey->regions[again.region];
		int across = here->left - there->left;
		int down = here->first_cell.y - there->first_cell.y;
		struct rectangle box = box_of(&again);

		again.region = region;
		snag_put_around(&again,
			(struct place){ again.cell.x + across, again.cell.y + down },
			(struct rectangle){ box.left + across, box.top + down, box.right + across,
				box.bottom + down });
		*snag_add(list, again.code, region, again.figures) = again;
	}
}

void snag_mirror(struct snag_list *list, const struct plot *plot)
{
	struct mirror mirror = mirror_of(plot);
	struct place at = { 0, 0 };

	while (!stop_asked() && mirror_next_fault(&mirror, &plot->ground, at, &at)) {
		snag_put(snag_add(list, SNAG_MIRROR_BROKEN, NO_REGION, SNAG_FIGURES_OF(0)), at);
		at.x++;
	}
}

void snag_names(struct snag_list *list, const struct plot *plot)
{
	const struct names *names = &plot->details.names;

	for (size_t i = 0; i < names->count && !stop_asked(); i++) {
		struct place at = names->items[i].at;

		if (ground_cell(&plot->ground, at.x, at.y) == OPEN_GROUND)
			snag_put(snag_add(list, SNAG_NAME_OPEN, NO_REGION, SNAG_FIGURES_OF(0)),
				at);
	}
}

static int compare_places(const struct snag *one, const struct snag *other)
{
	int order = compare(one->code, other->code);

	return order ? order : place_order(one->cell, other->cell);
}

static int compare_snags(const void *a, const void *b)
{
	const struct snag *one = a, *other = b;
	int order = compare_places(one, other);

	if (order == 0)
		order = compare(one->loop, other->loop);
	return order ? order : compare(one->side, other->side);
}

static bool are_sorted(const struct snag *snags, size_t count)
{
	for (size_t i = 1; i < count && !stop_asked(); i++)
		if (compare_snags(&snags[i - 1], &snags[i]) > 0)
			return false;
	return true;
}

/* Brings those of each code together; ends[code] is where they end. */
static void gather_codes(struct snag_list *list, size_t ends[static SNAG_CODES])
{
	struct snag *gathered = memory_resize(NULL, list->count, sizeof *gathered);
	size_t before = 0;

	for (size_t i = 0; i < list->count && !stop_asked(); i++)
		ends[list->list[i].code]++;
	for (int code = 0; code < SNAG_CODES; code++) {
		size_t count = ends[code];

		ends[code] = before;
		before += count;
	}
	for (size_t i = 0; i < list->count && !stop_asked(); i++)
		gathered[ends[list->list[i].code]++] = list->list[i];
	if (!stop_asked())
		memcpy(list->list, gathered, list->count * sizeof *gathered);
	free(gathered);
}

/* A trade goes from region to region: of one code most are in order already. */
void snag_sort(struct snag_list *list)
{
	size_t ends[SNAG_CODES] = { 0 }, from = 0;

	if (are_sorted(list->list, list->count))
		return;
	gather_codes(list, ends);
	for (int code = 0; code < SNAG_CODES && !stop_asked(); code++) {
		struct snag *snags = list->list + from;
		size_t count = ends[code] - from;

		if (!are_sorted(snags, count))
			sort(snags, count, sizeof *snags, compare_snags);
		from = ends[code];
	}
}

/* The first from `from` on that is not before the given one's code and place. */
static size_t first_from(const struct snag_list *sorted, const struct snag *wanted, size_t from)
{
	size_t end = sorted->count;

	while (from < end) {
		size_t middle = from + (end - from) / 2;

		if (compare_places(&sorted->list[middle], wanted) < 0)
			from = middle + 1;
		else
			end = middle;
	}
	return from;
}

size_t snag_at(const struct snag_list *sorted, struct place cell, size_t from)
{
	while (from < sorted->count) {
		struct snag wanted = { .code = sorted->list[from].code, .cell = cell };

		from = first_from(sorted, &wanted, from);
		if (from == sorted->count || compare_places(&sorted->list[from], &wanted) == 0)
			return from;
		if (sorted->list[from].code > wanted.code)
			continue;
		wanted = (struct snag){ .code = wanted.code + 1 };
		from = first_from(sorted, &wanted, from);
	}
	return sorted->count;
}

bool snag_is_alike(const struct snag *a, const struct snag *b)
{
	return a->code == b->code && a->kind == b->kind &&
		memcmp(a->figures, b->figures, SNAG_FIGURES * sizeof *a->figures) == 0;
}

bool snag_box_equal(const struct snag_box *a, const struct snag_box *b)
{
	return memcmp(a, b, sizeof *a) == 0;
}

struct snag_box snag_first_image(const struct mirror *mirror, const struct snag *snag)
{
	struct rectangle images[IMAGES_MOST], first;
	int count = mirror_rectangles(mirror, box_of(snag), images);

	first = images[0];
	for (int i = 1; i < count; i++)
		if (images[i].top < first.top ||
			(images[i].top == first.top && images[i].left < first.left))
			first = images[i];
	return box_from(first);
}

size_t snag_next_code(const struct snag_list *sorted, size_t from)
{
	size_t next = from + 1;

	while (next < sorted->count && sorted->list[next].code == sorted->list[from].code)
		next++;
	return next;
}
