#include "report/compare/hand_rows.h"
#include "base/groups.h"
#include "base/hash.h"
#include "report/words/item_words.h"
#include "report/words/page.h"

#include <math.h>
#include <string.h>

/* A field's name takes no parentheses. NOLINTBEGIN(bugprone-macro-parentheses) */
#define AMOUNTS(key, label_, amounts) \
	{ key, NULL, label_, FIELD(NUMBER, goods_row, amounts.each) }, \
	{ key "_m", NULL, label_, FIELD(LENGTH, goods_row, amounts.m) }, \
	{ key "_m2", NULL, label_, FIELD(AREA, goods_row, amounts.m2) }, \
	{ key "_m3", NULL, label_, FIELD(VOLUME, goods_row, amounts.m3) }, \
	{ key "_kg", NULL, label_, FIELD(WEIGHT, goods_row, amounts.kg) }
/* NOLINTEND(bugprone-macro-parentheses) */

static const struct figure figures[] = {
	{ "id", NULL, NULL, FIELD(TEXT, goods_row, id), .flags = ROW_KEY },
	{ "name", NULL, NULL, FIELD(TEXT, goods_row, name), .flags = ROW_KEY | PANEL_TITLE },
	{ "unit", NULL, NULL, FIELD(TEXT, goods_row, unit_word), .flags = ROW_KEY },
	AMOUNTS("laid", "Laid", laid),
	AMOUNTS("spare", "Spare", spare),
	AMOUNTS("reused", "Dug here", reused),
	AMOUNTS("order", "Order", order),
	{ "packs", NULL, "Ask for", FIELD(TEXT, goods_row, packs) },
};
static const struct figure_table goods_table = FIGURE_TABLE(goods_row, figures);

static void add(struct amounts *to, enum item_unit unit, double amount)
{
	switch (unit) {
	case UNIT_EACH:
		to->each += amount;
		break;
	case UNIT_M:
		to->m += llround(amount * (double)NM_PER_M);
		break;
	case UNIT_M2:
		to->m2 += amount;
		break;
	case UNIT_M3:
		to->m3 += amount;
		break;
	case UNIT_KG:
		to->kg += amount;
		break;
	}
}

double goods_order(const struct goods_row *row)
{
	const struct amounts *order = &row->order;

	return order->each + order->m2 + order->m3 + order->kg +
		(double)order->m / (double)NM_PER_M;
}

/* Whether both are one good of one size. */
static bool are_one_good(const void *a, const void *b, const void *context)
{
	const struct item *one = a, *two = b;

	(void)context;
	return one->good == two->good && strcmp(one->name, two->name) == 0 &&
		one->unit == two->unit &&
		memcmp(&one->block, &two->block, sizeof one->block) == 0 &&
		one->length == two->length && one->height == two->height &&
		one->across == two->across;
}

static uint64_t hash_good(const void *item, const void *context)
{
	const struct item *of = item;
	uint64_t hash = hash_bytes(HASH_EMPTY, of->name, strlen(of->name));

	(void)context;
	hash = hash_bytes(hash, &of->good, sizeof of->good);
	hash = hash_bytes(hash, &of->length, sizeof of->length);
	return hash_bytes(hash, &of->block, sizeof of->block);
}

static const char *keep(struct arena *arena, const char *words)
{
	char *kept = arena_print(arena, "%s", words);

	for (char *c = kept; *c; c++)
		*c = *c == PAGE_TIE ? ' ' : *c;
	return kept;
}

static bool is_shared(const struct item_list *items, const struct item *item)
{
	for (size_t i = 0; i < items->count; i++)
		if (&items->list[i] != item && items->list[i].with == item->with &&
			item_purchase(items, item) && item_purchase(items, &items->list[i]))
			return true;
	return false;
}

static void row_fill(struct goods_row *row, struct arena *arena, const struct report *report,
	const struct group *group)
{
	const struct item *list = report->takeoff->items.list;
	const struct item *first = &list[group->members[0]];
	const bool is_alone = group->count == 1 && !is_shared(&report->takeoff->items, first);
	const struct purchase *purchase = is_alone ? first->purchase : NULL;
	struct text packs = TEXT_EMPTY;

	*row = (struct goods_row){ .id = keep(arena, item_id(report, first)),
		.name = keep(arena, item_sized_label(report, first)), .unit = item_unit(first),
		.unit_word = item_unit_word(item_unit(first)),
		.is_shared = !is_alone,
		.bought = purchase && purchase->count == 1 ? purchase->list : NULL };
	for (int i = 0; i < group->count; i++) {
		const struct item *item = &list[group->members[i]];

		add(&row->laid, row->unit, item->laid);
		add(&row->spare, row->unit, item->spare);
		add(&row->reused, row->unit, item->reused);
		add(&row->order, row->unit, item->order);
		text_print(&packs, "%s%s", i ? "; " : "", item_order(report, item));
	}
	row->packs = keep(arena, packs.bytes);
	text_fini(&packs);
}

struct rows goods_rows(struct arena *arena, const struct report *report)
{
	const struct item_list *items = &report->takeoff->items;
	struct groups groups = groups_make(items->list, (int)items->count, sizeof *items->list,
		&(struct alike){ are_one_good, hash_good, NULL });
	struct goods_row *rows = arena_new(arena, (size_t)groups.count, sizeof *rows);
	int count = groups.count;

	for (int i = 0; i < count; i++)
		row_fill(&rows[i], arena, report, &groups.list[i]);
	arena_clear(report->words);
	groups_fini(&groups);
	return (struct rows){ &goods_table, rows, count };
}
