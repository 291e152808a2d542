#include "takeoff/costs/heaps.h"
#include "base/measure.h"

#include <math.h>

static const double SLOPE = 0.70020753820970977; /* the tangent of 35 degrees */
static const nm HIGHEST = 1500 * NM_PER_MM;
static const double PALLET_CARRIES = 1000; /* kg */

static const double pi = 3.14159265358979323846;

double heap_area(double volume, nm *height)
{
	double radius = cbrt(3 * volume / (pi * SLOPE)), high = radius * SLOPE;
	double most = metres(HIGHEST), cone;

	*height = llround(fmin(high, most) * (double)NM_PER_M);
	if (high <= most)
		return pi * radius * radius;
	radius = most / SLOPE;
	cone = pi * radius * radius * most / 3;
	return pi * radius * radius + 2 * (volume - cone) / most;
}

static double pallet_area(enum units units)
{
	return units == UNITS_METRIC ? 1.2 : 16 * metres(NM_PER_FOOT) * metres(NM_PER_FOOT);
}

static bool is_on_pallets(const struct item *item, const struct bought *bought)
{
	return item->good == GOOD_BLOCK_WALL || item->good == GOOD_BLOCK_CAP ||
		bought->pack->kind == PACK_BAG;
}

/* What of an item is bought in bulk, m3; adds the weight of what comes on pallets. */
static double bulk_of(const struct item *item, double *weight)
{
	double volume = 0;

	for (int i = 0; i < item->purchase->count; i++) {
		const struct bought *bought = &item->purchase->list[i];

		volume += bought->volume;
		*weight += is_on_pallets(item, bought) ? bought->weight : 0;
	}
	return volume;
}

static const char *id_of(struct arena *arena, const struct item *item)
{
	struct text id = TEXT_EMPTY;
	const char *copy;

	good_add_id(&id, item->good, item->name);
	copy = arena_print(arena, "%s", id.bytes);
	text_fini(&id);
	return copy;
}

/* Heaps while they are listed. */
struct heaping {
	struct arena *arena;
	struct heap *list;
	int count;
	size_t capacity;
};

static void add_heap(struct heaping *heaping, const struct heap *heap)
{
	heaping->list = arena_grow(heaping->arena, heaping->list, (size_t)heaping->count,
		&heaping->capacity, sizeof *heaping->list);
	heaping->list[heaping->count++] = *heap;
}

static void add_day(struct heaping *heaping, const struct item_list *items, enum day day,
	enum units units)
{
	double weight = 0;

	for (size_t i = 0; i < items->count; i++) {
		const struct item *item = &items->list[i];
		struct heap heap = { .day = day, .item = (int)i };

		if (!item->purchase || item->purchase->day != (int)day)
			continue;
		heap.volume = bulk_of(item, &weight);
		if (heap.volume <= 0)
			continue;
		heap.id = id_of(items->arena, item);
		heap.area = heap_area(heap.volume, &heap.height);
		add_heap(heaping, &heap);
	}
	if (weight > 0) {
		int64_t pallets = (int64_t)whole(weight / PALLET_CARRIES);

		add_heap(heaping, &(struct heap){ .day = day, .item = NO_ITEM, .id = "pallets",
			.pallets = pallets, .area = (double)pallets * pallet_area(units) });
	}
}

void heaps_find(struct heaps *out, const struct item_list *items, const struct plot *plot)
{
	struct heaping heaping = { .arena = items->arena };

	for (int day = 0; plot->details.around.has_drop && day < DAYS; day++)
		add_day(&heaping, items, (enum day)day, plot_units(plot));
	*out = (struct heaps){ heaping.list, heaping.count };
}

static const struct figure figures[] = {
	{ "day", NULL, NULL, FIELD(WORD, heap, day), .words = day_words, .flags = ROW_KEY },
	{ "id", NULL, NULL, FIELD(TEXT, heap, id), .flags = ROW_KEY },
	{ "volume_m3", NULL, NULL, FIELD(VOLUME, heap, volume) },
	{ "height_m", NULL, NULL, FIELD(LENGTH, heap, height) },
	{ "pallets", NULL, NULL, FIELD(COUNT, heap, pallets) },
	{ "area_m2", NULL, "Ground it takes", FIELD(AREA, heap, area) },
};
const struct figure_table heap_table = FIGURE_TABLE(heap, figures);
