/* Words of items: what they are, how much of them, how they are bought. */
#ifndef REPORT_WORDS_ITEM_WORDS_H
#define REPORT_WORDS_ITEM_WORDS_H

#include "base/measure.h"
#include "report/words/words.h"

/* "stone.base", "soil.topsoil". */
const char *item_id(const struct report *report, const struct item *item);
/* "Wall block"; for a part of a mix its name: "Sharp sand"; extra goods as the plot calls them. */
const char *item_label(const struct report *report, const struct item *item);
/* The size of a block, of a post (length x square), of a panel or a leaf (width x height); "" for
 * what is of one size. */
const char *item_size(const struct report *report, const struct item *item);
/* Label and size. */
const char *item_sized_label(const struct report *report, const struct item *item);
/* An amount of an item, in its unit as people read it. */
const char *plain_item_amount(const struct report *report, const struct item *item, double amount);
/* The same, tied. */
const char *item_amount(const struct report *report, const struct item *item, double amount);
/* The note beside it, such as what the spare is for; NULL: none. */
const char *item_note(const struct report *report, const struct item *item);
/* "14 bags of 2 cu ft", "2.50 cu yd in bulk", "51 pieces": the packs of an item that has a
 * price. */
const char *item_packs(const struct report *report, const struct item *item);
/* More than this, kg, one person should not lift: common practice, no published source. */
#define LIFT_MOST (50 * KG_PER_POUND)
/* The kilograms that are lifted at once: a bag, a block, a roll. Bulk is shovelled, and a pallet
 * stays on its truck's fork until its pieces are taken off. 0: not known, or nothing is lifted. */
double item_lifted(const struct item *item);
/* Whether a pack is one piece. */
bool pack_is_single(const struct pack *pack);
/* The supplier's name, or "collected". */
const char *supplier_words(const struct book *book, int supplier);

#endif
