#include "takeoff/common/snags.h"
#include "base/number.h"
#include "plot/mirror.h"

#include <stdlib.h>
#include <string.h>

struct snag *snag_add(struct snag_list *list, enum snag_code code, int region,
	const nm figures[static SNAG_FIGURES])
{
	struct snag *snag;

	list->list = arena_grow(list->arena, list->list, list->count, &list->capacity,
		sizeof *list->list);
	snag = &list->list[list->count++];
	*snag = (struct snag){ .code = code, .region = region, .loop = -1, .side = -1 };
	memcpy(snag->figures, figures, sizeof snag->figures);
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
	int order = compare(one->code, other->code);

	if (order == 0)
		order = compare(one->cell.y, other->cell.y);
	if (order == 0)
		order = compare(one->cell.x, other->cell.x);
	if (order == 0)
		order = compare(one->loop, other->loop);
	return order ? order : compare(one->side, other->side);
}

void snag_sort(struct snag_list *list)
{
	if (list->count > 1)
		qsort(list->list, list->count, sizeof *list->list, compare_snags);
}

bool snag_is_alike(const struct snag *a, const struct snag *b)
{
	return a->code == b->code && a->kind == b->kind &&
		memcmp(a->figures, b->figures, sizeof a->figures) == 0;
}

size_t snag_next_code(const struct snag_list *sorted, size_t from)
{
	size_t next = from + 1;

	while (next < sorted->count && sorted->list[next].code == sorted->list[from].code)
		next++;
	return next;
}
