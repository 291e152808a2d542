#include "report/text/planting_beds.h"
#include "base/hash.h"
#include "base/stop.h"
#include "survey/shape.h"

#include <stdlib.h>

static const struct planting *planting_of(const struct report *report)
{
	return &report->takeoff->planting;
}

static struct spot corner_of(const struct report *report, int region)
{
	const struct survey *survey = &report->takeoff->survey;

	if (region == NO_REGION)
		return (struct spot){ 0, 0 };
	return (struct spot){ survey->regions[region].left * survey->cell,
		survey->regions[region].first_cell.y * survey->cell };
}

static bool are_rows_alike(const struct planting_row *a, const struct planting_row *b,
	struct spot corner_a, struct spot corner_b)
{
	if (a->kind != b->kind || a->count != b->count || a->specimens != b->specimens)
		return false;
	for (int i = 0; i < a->spot_count; i++)
		if (a->spots[i].at.x - corner_a.x != b->spots[i].at.x - corner_b.x ||
			a->spots[i].at.y - corner_a.y != b->spots[i].at.y - corner_b.y)
			return false;
	return true;
}

static bool are_alike(const void *one, const void *other, const void *context)
{
	const struct report *report = context;
	const struct planted_place *a = one, *b = other;
	const struct planting_row *rows = planting_of(report)->list;

	if (a->end - a->from != b->end - b->from || a->region == NO_REGION ||
		b->region == NO_REGION || !shape_is_equal(report->plot, &report->takeoff->survey,
			a->region, b->region))
		return a == b;
	for (int i = 0; i < a->end - a->from; i++)
		if (!are_rows_alike(&rows[a->from + i], &rows[b->from + i],
			corner_of(report, a->region), corner_of(report, b->region)))
			return false;
	return true;
}

static uint64_t hash_of(const void *item, const void *context)
{
	const struct report *report = context;
	const struct planted_place *place = item;
	struct spot corner = corner_of(report, place->region);
	uint64_t hash = HASH_EMPTY;

	for (int i = place->from; i < place->end; i++) {
		const struct planting_row *row = &planting_of(report)->list[i];
		int64_t parts[] = { row->kind, row->count, row->specimens };

		hash = hash_bytes(hash, parts, sizeof parts);
		for (int j = 0; j < row->spot_count; j++) {
			nm at[] = { row->spots[j].at.x - corner.x, row->spots[j].at.y - corner.y };

			hash = hash_bytes(hash, at, sizeof at);
		}
	}
	return hash;
}

void planting_beds_make(struct planting_beds *out, const struct report *report)
{
	const struct planting *planting = planting_of(report);
	size_t count = 0, capacity = 0;

	*out = (struct planting_beds){ .list = NULL };
	for (int from = 0, end = 0; from < planting->count && !stop_asked(); from = end) {
		int64_t plants = 0;

		for (; end < planting->count &&
			planting->list[end].region == planting->list[from].region; end++)
			plants += planting->list[end].count;
		if (plants == 0)
			continue;
		out->list = memory_grow(out->list, count, &capacity, sizeof *out->list);
		out->list[count++] = (struct planted_place){ planting->list[from].region, from,
			end };
	}
	out->count = (int)count;
	out->alike = groups_make(out->list, out->count, sizeof *out->list,
		&(struct alike){ are_alike, hash_of, report });
}

void planting_beds_fini(struct planting_beds *beds)
{
	groups_fini(&beds->alike);
	free(beds->list);
}

static const struct figure place_figures[] = {
	{ FIELD(REGION, planted_place, region) },
};
static const struct figure_table place_table = FIGURE_TABLE(planted_place, place_figures);

const char *planting_beds_words(const struct report *report, const struct planting_beds *beds,
	const struct group *group)
{
	return beds->list[group->members[0]].region == NO_REGION ? "open ground" :
		group_words(report, &place_table, beds->list, group);
}
