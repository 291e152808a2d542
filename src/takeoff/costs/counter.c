#include "takeoff/costs/counter.h"
#include "base/measure.h"
#include "base/show.h"
#include "takeoff/common/bags.h"

static const double M2_PER_SQUARE_FOOT = 0.09290304, M_PER_FOOT = 0.3048;

/* By units: imperial, metric. A bag is what one person can lift: 1/2 cu ft of stone weighs 50 lb,
 * 12.5 L of it 20 kg, 2 cu ft of mulch 45 lb. */
static const struct pack loose[] = {
	{ .kind = PACK_BULK, .unit = UNIT_M3, .size = 27 * M3_PER_CUBIC_FOOT, .words = "1 cu yd" },
	{ .kind = PACK_BULK, .unit = UNIT_M3, .size = 1, .words = "1 m3" },
};
static const struct pack weighed[] = {
	{ .kind = PACK_BULK, .unit = UNIT_KG, .size = 2000 * KG_PER_POUND,
		.step = 500 * KG_PER_POUND, .words = "1 ton" },
	{ .kind = PACK_BULK, .unit = UNIT_KG, .size = 1000, .step = 250, .words = "1 t" },
};
static const struct pack bags[] = {
	{ .kind = PACK_BAG, .unit = UNIT_M3, .size = M3_PER_CUBIC_FOOT / 2, .words = "1/2 cu ft" },
	{ .kind = PACK_BAG, .unit = UNIT_M3, .size = 0.0125, .words = "12.5 L" },
};
static const struct pack light_bags[] = {
	{ .kind = PACK_BAG, .unit = UNIT_M3, .size = 2 * M3_PER_CUBIC_FOOT, .words = "2 cu ft" },
	{ .kind = PACK_BAG, .unit = UNIT_M3, .size = 0.05, .words = "50 L" },
};
static const struct pack lengths[] = {
	{ .kind = PACK_BULK, .unit = UNIT_M, .size = M_PER_FOOT, .words = "1 ft" },
	{ .kind = PACK_BULK, .unit = UNIT_M, .size = 1, .words = "1 m" },
};
static const struct pack areas[] = {
	{ .kind = PACK_BULK, .unit = UNIT_M2, .size = M2_PER_SQUARE_FOOT, .words = "1 sq ft" },
	{ .kind = PACK_BULK, .unit = UNIT_M2, .size = 1, .words = "1 m2" },
};
static const struct pack weights[] = {
	{ .kind = PACK_BULK, .unit = UNIT_KG, .size = KG_PER_POUND, .words = "1 lb" },
	{ .kind = PACK_BULK, .unit = UNIT_KG, .size = 0.5, .words = "500 g" },
};

/* Whole pieces; concrete in bags that are known by their weight. */
static struct pack piece_of(const struct item *item)
{
	const struct concrete_bag *bag = item->note.kind == NOTE_CONCRETE ?
		bag_of(amount_si(&item->note.amount)) : NULL;

	return (struct pack){ .kind = item->note.kind == NOTE_CONCRETE ? PACK_BAG : PACK_PIECE,
		.unit = UNIT_EACH, .size = 1, .words = bag ? bag->words : "1" };
}

/* Spoil is hauled away as it comes, in no steps. */
static struct pack volume_of_item(const struct pricing *pricing, const struct item *item,
	double order)
{
	enum attribute density = good_density(item->good, item->name);
	struct pack spoil = loose[pricing->units];
	bool is_little = order < block_amount(pricing->allow, ALLOW_TRUCK_STEP) * (1 - 1e-9);

	spoil.step = order;
	if (item->good == GOOD_SPOIL)
		return spoil;
	if (is_little)
		return item->good == GOOD_MULCH ? light_bags[pricing->units] : bags[pricing->units];
	return density == ALLOW_DENSITY_STONE ? weighed[pricing->units] : loose[pricing->units];
}

/* Of the size in its note, and said as there. */
static struct pack roll_of(struct arena *arena, const struct pricing *pricing,
	const struct item *item)
{
	nm width = item->note.lengths[0], length = item->note.lengths[1];
	struct text words = TEXT_EMPTY;

	show_length(&words, width, pricing->units);
	text_add(&words, " x ");
	show_length(&words, length, pricing->units);
	return (struct pack){ .kind = PACK_ROLL, .unit = UNIT_M2, .size = area_of(width, length),
		.words = text_keep(&words, arena) };
}

struct pack counter_pack(struct arena *arena, const struct pricing *pricing,
	const struct item *item, double order)
{
	struct pack pack = { .words = "" };

	switch (item_unit(item)) {
	case UNIT_EACH:
		pack = piece_of(item);
		break;
	case UNIT_M:
		pack = lengths[pricing->units];
		break;
	case UNIT_M2:
		pack = item->note.kind == NOTE_LINER ? roll_of(arena, pricing, item) :
			areas[pricing->units];
		break;
	case UNIT_M3:
		pack = volume_of_item(pricing, item, order);
		break;
	case UNIT_KG:
		pack = weights[pricing->units];
		break;
	}
	pack.price = NO_PRICE;
	pack.supplier = NO_SUPPLIER;
	return pack;
}
