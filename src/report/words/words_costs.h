/* Words of packs and prices, for the sections of the text and the pages of the panel. */
#ifndef REPORT_WORDS_WORDS_COSTS_H
#define REPORT_WORDS_WORDS_COSTS_H

#include "takeoff/takeoff.h"

/* "1,234.50". */
void word_money(struct text *text, money amount);
/* "14 bags of 2 cu ft", "2.50 cu yd in bulk", "51 pieces": what is bought of an item that has a price. */
void word_packs(struct text *text, const struct item *item, enum units units);
/* Packs of one piece each: as many as are ordered. */
bool pack_is_single(const struct pack *pack);
/* The supplier's name, or "collected". */
const char *supplier_words(const struct book *book, int supplier);

#endif
