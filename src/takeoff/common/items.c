#include "takeoff/common/items.h"

enum item_unit item_unit(const struct item *item)
{
	return good_row(item->good)->unit;
}

static double unit_weight(const struct block *allow, const struct good_row *good)
{
	if (good->unit == UNIT_KG)
		return 1;
	return good->density == NO_DENSITY ? 0 : block_amount(allow, good->density);
}

struct item *item_add(struct item_list *items, const struct item *item)
{
	struct item *row;

	items->list = arena_grow(items->arena, items->list, items->count, &items->capacity,
		sizeof *items->list);
	row = &items->list[items->count++];
	*row = *item;
	if (!row->name)
		row->name = "";
	if (row->unit_weight <= 0)
		row->unit_weight = unit_weight(items->allow, good_row(row->good));
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
