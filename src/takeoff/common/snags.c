#include "takeoff/common/snags.h"
#include "base/hash.h"
#include "base/number.h"
#include "plot/mirror.h"

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
	*snag = (struct snag){ .code = code, .region = region, .loop = -1, .side = -1,
		.figures = shared(list, figures) };
	if (region != NO_REGION)
		snag->cell = list->survey->regions[region].first_cell;
	return snag;
}

void snag_mirror(struct snag_list *list, const struct plot *plot)
{
	struct mirror mirror = mirror_of(plot);
	struct place at = { 0, 0 };

	while (mirror_next_fault(&mirror, &plot->ground, at, &at)) {
		snag_add(list, SNAG_MIRROR_BROKEN, NO_REGION, SNAG_FIGURES_OF(0))->cell = at;
		at.x++;
	}
}

static int compare_snags(const void *a, const void *b)
{
	const struct snag *one = a, *other = b;
	int order = compare(one->cell.y, other->cell.y);

	if (order == 0)
		order = compare(one->cell.x, other->cell.x);
	if (order == 0)
		order = compare(one->loop, other->loop);
	return order ? order : compare(one->side, other->side);
}

/* Those of one code. A trade that goes from region to region has most of them in order. */
static void sort_places(struct snag *snags, size_t count)
{
	size_t in_order = 1;

	while (in_order < count && compare_snags(&snags[in_order - 1], &snags[in_order]) <= 0)
		in_order++;
	if (in_order < count)
		qsort(snags, count, sizeof *snags, compare_snags);
}

void snag_sort(struct snag_list *list)
{
	size_t ends[SNAG_CODES + 1] = { 0 }, from = 0;
	struct snag *sorted = memory_resize(NULL, list->count, sizeof *sorted);

	for (size_t i = 0; i < list->count; i++)
		ends[list->list[i].code + 1]++;
	for (int code = 0; code < SNAG_CODES; code++)
		ends[code + 1] += ends[code];
	for (size_t i = 0; i < list->count; i++)
		sorted[ends[list->list[i].code]++] = list->list[i];
	if (list->count > 0)
		memcpy(list->list, sorted, list->count * sizeof *sorted);
	free(sorted);
	for (int code = 0; code < SNAG_CODES; code++) {
		sort_places(list->list + from, ends[code] - from);
		from = ends[code];
	}
}

bool snag_is_alike(const struct snag *a, const struct snag *b)
{
	return a->code == b->code && a->kind == b->kind &&
		memcmp(a->figures, b->figures, SNAG_FIGURES * sizeof *a->figures) == 0;
}

size_t snag_next_code(const struct snag_list *sorted, size_t from)
{
	size_t next = from + 1;

	while (next < sorted->count && sorted->list[next].code == sorted->list[from].code)
		next++;
	return next;
}
