#include "takeoff/common/items.h"
#include "takeoff/common/bags.h"

enum item_unit item_unit(const struct item *item)
{
	return item->good == GOOD_EXTRA ? item->unit : good_row(item->good)->unit;
}

struct wanted_goods item_wanted(const struct item *item)
{
	return (struct wanted_goods){ item->good, item->name, item->block, item->length,
		item->height, item->across };
}

const struct purchase *item_purchase(const struct item_list *items, const struct item *item)
{
	return items->list[item->with].purchase;
}

static double unit_weight(const struct block *allow, const struct item *item)
{
	enum attribute density = good_density(item->good, item->name);

	if (item_unit(item) == UNIT_KG)
		return 1;
	if (item->note.kind == NOTE_CONCRETE)
		return bag_weight(&item->note.amount);
	return density == NO_DENSITY ? 0 : block_amount(allow, density);
}

struct item *item_add(struct item_list *items, const struct item *item)
{
	struct item *row;

	items->list = arena_grow(items->arena, items->list, items->count, &items->capacity,
		sizeof *items->list);
	row = &items->list[items->count++];
	*row = *item;
	row->with = (int)items->count - 1;
	if (!row->name)
		row->name = "";
	if (row->unit_weight <= 0)
		row->unit_weight = unit_weight(items->allow, row);
	return row;
}

void item_add_spare(struct item_list *items, const struct item *item, int64_t spare)
{
	struct item *row;

	if (item->laid <= 0)
		return;
	row = item_add(items, item);
	row->spare = row->laid * ((double)spare / (double)MILLION / 100);
	row->order = row->laid + row->spare;
}

void item_add_bare(struct item_list *items, enum good good, enum section section, double laid)
{
	if (laid > 0)
		item_add(items, &(struct item){ .good = good, .section = section, .laid = laid,
			.order = laid });
}

static enum item_unit unit_of(enum amount_unit unit)
{
	switch (unit) {
	case AMOUNT_GOODS_FT:
	case AMOUNT_GOODS_M:
		return UNIT_M;
	case AMOUNT_GOODS_SQ_FT:
	case AMOUNT_GOODS_M2:
		return UNIT_M2;
	case AMOUNT_GOODS_CU_FT:
	case AMOUNT_GOODS_M3:
		return UNIT_M3;
	case AMOUNT_GOODS_LB:
	case AMOUNT_GOODS_KG:
		return UNIT_KG;
	default:
		return UNIT_EACH;
	}
}

void items_add_extras(struct item_list *items, const struct details *details)
{
	for (size_t i = 0; i < details->extra_count; i++) {
		const struct extra *extra = &details->extras[i];
		double amount = amount_si(&extra->amount);

		item_add(items, &(struct item){ .good = GOOD_EXTRA, .section = SECTION_OTHER,
			.name = extra->name, .unit = unit_of(extra->amount.unit), .laid = amount,
			.order = amount });
	}
}
