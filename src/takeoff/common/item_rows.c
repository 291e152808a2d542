#include "takeoff/common/item_rows.h"

struct item *item_add(struct items *items, const struct item *item)
{
	items->rows = arena_grow(items->arena, items->rows, items->count, &items->capacity,
		sizeof *items->rows);
	items->rows[items->count] = *item;
	return &items->rows[items->count++];
}

void item_add_spare(struct items *items, const struct item *item, int64_t spare)
{
	struct item *row;

	if (item->laid <= 0)
		return;
	row = item_add(items, item);
	row->spare = row->laid * ((double)spare / (double)MILLION / 100);
	row->order = row->laid + row->spare;
}

const char *item_percent(struct arena *arena, int64_t millionths, const char *what)
{
	struct text words = TEXT_EMPTY;
	const char *note;

	text_add_decimal(&words, millionths, 6);
	note = arena_print(arena, "%s %% %s", words.bytes, what);
	text_fini(&words);
	return note;
}
