#include "takeoff/compute.h"
#include "takeoff/walls/cutting.h"
#include "takeoff/ground/fill.h"
#include "takeoff/items.h"
#include "takeoff/common/snags.h"
#include "takeoff/walls/wall.h"

#include <limits.h>

static void areas_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot)
{
	const struct survey *survey = &takeoff->survey;
	const struct details *details = &plot->details;
	int64_t cells[UCHAR_MAX + 1] = { 0 };
	size_t count = details->legend_count + 1;
	struct area_row *areas = arena_new(arena, count, sizeof *areas);

	for (size_t i = 0; i < survey->row_runs[survey->rows]; i++) {
		const struct run *run = &survey->runs[i];

		cells[(unsigned char)run->letter] += run->right - run->left;
	}
	for (size_t i = 0; i < count; i++) {
		const struct entry *entry = i < details->legend_count ? &details->legend[i] : NULL;
		int64_t own = cells[(unsigned char)(entry ? entry->letter : OPEN_GROUND)];

		areas[i] = (struct area_row){ entry, own, survey_area(own, survey->cell) };
	}
	takeoff->areas = areas;
	takeoff->area_count = (int)count;
}

/* The plot's own values go before the book's. Nothing in the result is owned. */
static const struct block *allow_in_force(struct arena *arena, const struct plot *plot,
	const struct book *book)
{
	struct block *allow = arena_new(arena, 1, sizeof *allow);

	*allow = (struct block){ .kind = BLOCK_ALLOW,
		.values = arena_new(arena, block_attributes(BLOCK_ALLOW), sizeof *allow->values) };
	for (enum attribute a = block_first(BLOCK_ALLOW); a <= block_last(BLOCK_ALLOW); a++) {
		const struct value *own = block_value(&plot->details.allow, a);

		allow->values[a - block_first(BLOCK_ALLOW)] =
			own->set || !book ? *own : *block_value(&book->allow, a);
	}
	return allow;
}

static void dig_compute(struct takeoff *takeoff, struct arena *arena)
{
	struct dig_list list = { .arena = arena, .allow = takeoff->allow };

	dig_zones(&list, takeoff);
	fencing_dig(&list, takeoff);
	dig_finish(takeoff, &list);
}

void takeoff_compute(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book)
{
	struct snag_list snags = { .arena = arena };

	*out = (struct takeoff){ .complete = true, .book = book,
		.allow = allow_in_force(arena, plot, book) };
	survey_plot(&out->survey, arena, plot);
	areas_compute(out, arena, plot);
	wall_lay_all(out, arena, plot, &snags);
	cutting_plan(out, arena);
	fill_compute(out, arena, plot, &snags);
	zones_compute(out, arena, plot);
	fencing_compute(out, arena, plot, &snags);
	dig_compute(out, arena);
	stone_compute(out, arena);
	fabric_compute(out, arena);
	liner_compute(out, arena);
	edging_compute(out, arena, plot);
	lawn_compute(out, arena);
	items_compute(out, arena, plot);
	costs_compute(out, arena);
	work_plan(out, arena);
	snag_mirror(&snags, plot);
	snag_finish(&snags, out);
}
