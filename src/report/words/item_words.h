/* Words of items: what they are, how much of them, how they are bought. */
#ifndef REPORT_WORDS_ITEM_WORDS_H
#define REPORT_WORDS_ITEM_WORDS_H

#include "base/show.h"
#include "report/words/words.h"

/* "stone.base", "soil.topsoil". */
const char *item_id(const struct report *report, const struct item *item);
/* "sharp sand": a name that a plot or a book spells with dashes. */
const char *good_name_words(const struct report *report, const char *name);
/* "Wall block"; for a part of a mix its name: "Sharp sand"; extra goods as the plot calls them. */
const char *item_label(const struct report *report, const struct item *item);
/* The size of a block, of a post (length x square), of a panel or a leaf (width x height); "" for
 * what is of one size. */
const char *item_size(const struct report *report, const struct item *item);
/* Label and size. */
const char *item_sized_label(const struct report *report, const struct item *item);
/* An amount of an item, in its unit as people read it: all amounts of one item in the same. */
const char *plain_item_amount(const struct report *report, const struct item *item, double amount);
/* The same, tied. */
const char *item_amount(const struct report *report, const struct item *item, double amount);
/* The unit of its amounts where that is named apart: all of them in the same. */
const struct show_unit *item_shown_unit(const struct report *report, const struct item *item);
/* Its measures where label and size do not tell, tied: a panel between its posts, a leaf to its
 * gate, a roll, a piece, a cartridge; "": they do. */
const char *item_fit(const struct report *report, const struct item *item);
/* The note beside it, such as what the spare is for; NULL: none. */
const char *item_note(const struct report *report, const struct item *item);
/* "bag 2 cu ft", "bulk 1 cu yd", "piece 1". */
const char *pack_words(const struct report *report, const struct pack *pack);
/* "14 bags of 2 cu ft", "2 1/2 cu yd", "1 1/4 tons", "51 pieces". */
const char *bought_words(const struct report *report, const struct bought *bought);
/* What to ask for: all packs of its purchase, "4 pallets of 60 + 12 pieces", pieces alone by
 * their number; "with Topsoil" where it comes with another; "-" for nothing. */
const char *item_order(const struct report *report, const struct item *item);
/* The same packs on a line that tells who has them: "2 boxes of 12, Block yard; 3 pieces,
 * collected", and whether the plot itself tells the price. Nothing where it is not bought
 * itself. */
const char *item_packs(const struct report *report, const struct item *item);
/* The kilograms that are lifted at once: a bag, a block, a roll. Bulk is shovelled, and a pallet
 * stays on its truck's fork until its pieces are taken off. 0: not known, or nothing is lifted. */
double item_lifted(const struct item *item);
/* Whether that is more than one person should lift. */
bool item_is_heavy(const struct report *report, const struct item *item);
/* Whether the price book has packs of it. */
bool item_is_in_book(const struct report *report, const struct item *item);
/* What to ask for besides; "": nothing. */
const char *item_spec(const struct report *report, const struct item *item);
/* The supplier's name, or "collected". */
const char *supplier_words(const struct book *book, int supplier);

#endif
