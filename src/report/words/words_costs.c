#include "report/words/words_costs.h"
#include "base/show.h"

#include <math.h>

void word_money(struct text *text, money amount)
{
	show_count(text, amount / 100);
	text_print(text, ".%02d", (int)(amount % 100));
}

bool pack_is_single(const struct pack *pack)
{
	return pack->unit == UNIT_EACH && pack->size <= 1;
}

void word_packs(struct text *text, const struct item *item, enum units units)
{
	const struct pack *pack = item->pack;
	int64_t count = llround(item->packs);

	if (pack->kind == PACK_BULK) {
		if (pack->unit == UNIT_M3)
			show_volume(text, item->packs * pack->size, units);
		else
			show_weight(text, item->packs * pack->size, units);
		text_add(text, " in bulk");
		return;
	}
	show_count(text, count);
	text_print(text, " %s%s", pack_word(pack->kind), count == 1 ? "" : "s");
	if (!pack_is_single(pack))
		text_print(text, " of %s", pack->words);
}

const char *supplier_words(const struct book *book, int supplier)
{
	return supplier == NO_SUPPLIER ? "collected" : book->suppliers[supplier].name;
}
