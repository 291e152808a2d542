#include "takeoff/ground/liner.h"
#include "takeoff/common/item_rows.h"
#include "takeoff/common/snags.h"

/* NULL where the bed has no liner. */
static const struct wall *lined_wall(const struct takeoff *takeoff, const struct fill *fill)
{
	const struct wall *wall = takeoff_wall(takeoff, fill->region);

	return wall && block_number(wall->bed, BED_LINER) == CHOICE_YES ? wall : NULL;
}

void liner_compute(struct takeoff *takeoff, struct arena *arena)
{
	nm turn = block_length(takeoff->allow, ALLOW_LINER_TURN);
	struct liner *liners = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < takeoff->fill_count; i++) {
		const struct fill *fill = &takeoff->fills[i];
		const struct wall *wall = lined_wall(takeoff, fill);
		struct liner *liner;

		if (!wall)
			continue;
		liners = arena_grow(arena, liners, count, &capacity, sizeof *liners);
		liner = &liners[count++];
		*liner = (struct liner){ .region = fill->region, .length = wall->inner_perimeter,
			.height = fill->soil_depth + turn };
		liner->area = (double)liner->length / (double)NM_PER_M *
			((double)liner->height / (double)NM_PER_M);
	}
	takeoff->liners = liners;
	takeoff->liner_count = (int)count;
}

void liner_items(struct items *items, const struct takeoff *takeoff, const struct plot *plot)
{
	struct item liner = { .id = "liner", .section = SECTION_STONE, .label = "Liner",
		.unit = UNIT_M2 };

	for (int i = 0; i < takeoff->liner_count; i++)
		liner.laid += takeoff->liners[i].area;
	liner.note = arena_print(items->arena, "with %s turned under", snag_length(items->arena, plot,
		block_length(takeoff->allow, ALLOW_LINER_TURN)));
	item_add_spare(items, &liner, 0);
}
