#include "takeoff/ground/liner.h"
#include "base/measure.h"
#include "base/stop.h"

void liner_compute(struct liners *out, const struct basis *basis, const struct walls *walls,
	const struct fills *fills)
{
	nm turn = block_length(basis->allow, ALLOW_LINER_TURN);
	struct liner *liners = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < fills->count && !stop_asked(); i++) {
		const struct fill *fill = &fills->list[i];
		const struct wall *wall = walls_find(walls, fill->region);
		struct liner *liner;

		if (!wall || block_number(wall->bed, BED_LINER) != CHOICE_YES)
			continue;
		liners = arena_grow(basis->arena, liners, count, &capacity, sizeof *liners);
		liner = &liners[count++];
		*liner = (struct liner){ .region = fill->region, .length = wall->inner_perimeter,
			.height = fill->soil_depth + turn };
		liner->area = area_of(liner->length, liner->height);
	}
	*out = (struct liners){ liners, (int)count };
}

void liner_items(struct item_list *items, const struct liners *liners)
{
	struct item liner = { .good = GOOD_LINER, .section = SECTION_STONE,
		.note = { .kind = NOTE_LINER,
			.lengths = { block_length(items->allow, ALLOW_LINER_TURN) } } };

	for (int i = 0; i < liners->count && !stop_asked(); i++)
		liner.laid += liners->list[i].area;
	item_add_spare(items, &liner, 0);
}

static const struct figure figures[] = {
	{ "bed", NULL, NULL, FIELD(REGION, liner, region) },
	{ .heading = "Liners", .kind = FIGURE_ALIKE },
	{ "length_m", "Length", NULL, FIELD(LENGTH, liner, length) },
	{ "height_m", "Height", NULL, FIELD(INCHES, liner, height) },
	{ "area_m2", "Area each", NULL, FIELD(AREA, liner, area) },
};
const struct figure_table liner_table = FIGURE_TABLE(liner, figures);
