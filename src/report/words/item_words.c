#include "report/words/item_words.h"
#include "base/number.h"
#include "base/show.h"

#include <ctype.h>
#include <math.h>

const char *item_id(const struct report *report, const struct item *item)
{
	struct text id = TEXT_EMPTY;

	good_add_id(&id, item->good, item->name);
	return say_text(report, &id);
}

/* "Sharp sand" for sharp-sand. */
static const char *name_label(const struct report *report, const char *name)
{
	char *label = arena_print(report->words, "%s", name);

	label[0] = (char)toupper((unsigned char)label[0]);
	for (char *c = label; *c; c++)
		if (*c == '-')
			*c = ' ';
	return label;
}

const char *item_label(const struct report *report, const struct item *item)
{
	const char *label = good_row(item->good)->label;

	if (good_row(item->good)->varies == VARIES_BY_TITLE)
		return item->name;
	return label ? label : name_label(report, item->name);
}

const char *item_size(const struct report *report, const struct item *item)
{
	nm by = nm_most(item->height, item->across);

	if (!size_is_none(&item->block))
		return word_size(report, &item->block);
	return by == 0 ? "" : say(report, "%s x %s", word_length(report, item->length),
		word_length(report, by));
}

const char *item_sized_label(const struct report *report, const struct item *item)
{
	const char *label = item_label(report, item), *size = item_size(report, item);

	return *size ? say(report, "%s %s", label, size) : label;
}

const char *plain_item_amount(const struct report *report, const struct item *item, double amount)
{
	switch (item_unit(item)) {
	case UNIT_EACH:
		return amount == (double)(int64_t)amount ? plain_count(report, (int64_t)amount) :
			plain_decimal(report, amount, 2); /* of packs that hold several */
	case UNIT_M:
		return plain_length(report, llround(amount * (double)NM_PER_M));
	case UNIT_M2:
		return plain_area(report, amount);
	case UNIT_M3:
		return plain_volume(report, amount);
	case UNIT_KG:
		return plain_weight(report, amount);
	}
	return "";
}

const char *item_amount(const struct report *report, const struct item *item, double amount)
{
	return tied(report, plain_item_amount(report, item, amount));
}

/* ---- Notes ----------------------------------------------------------------------------------- */

/* "5 % breakage" from millionths of a percent. */
static const char *percent(const struct report *report, const struct note *note, const char *what)
{
	struct text words = TEXT_EMPTY;

	text_add_decimal(&words, note->percent, 6);
	text_print(&words, " %% %s", what);
	return say_text(report, &words);
}

/* "loose, 1.2 x compacted; 5 % spare". */
static const char *stone_note(const struct report *report, const struct note *note)
{
	struct text words = TEXT_EMPTY;

	text_add(&words, "loose, ");
	text_add_number(&words, note->factor, 6);
	text_print(&words, " x compacted; %s", percent(report, note, "spare"));
	return say_text(report, &words);
}

static const char *concrete_note(const struct report *report, const struct note *note)
{
	struct text words = TEXT_EMPTY;

	text_add(&words, "whole; ");
	amount_write(&words, &note->amount);
	text_add(&words, " each when mixed");
	return say_text(report, &words);
}

/* "Pickets; 2 of them cut up". */
static const char *fence_note(const struct report *report, const char *fence,
	const struct note *note, const char *more)
{
	return note->count == 0 ? fence :
		say(report, "%s; %lld %s", fence, (long long)note->count, more);
}

static const char *note_words(const struct report *report, const struct note *note)
{
	const char *length = plain_length(report, note->lengths[0]);

	switch (note->kind) {
	case NOTE_NONE:
		return NULL;
	case NOTE_BREAKAGE:
		return say(report, "%s%s", percent(report, note, "breakage"), note->count == 0 ?
			"" : say(report, ", %lld at least", (long long)note->count));
	case NOTE_SETTLEMENT:
		return note->percent == 0 ? "settlement by the mix" :
			percent(report, note, "settlement");
	case NOTE_TRIMMING:
		return percent(report, note, "trimming");
	case NOTE_STONE:
		return stone_note(report, note);
	case NOTE_CARTRIDGE:
		return say(report, "whole; bead %s each%s", length, note->percent == 0 ? "" :
			say(report, "; %s", percent(report, note, "spare")));
	case NOTE_SPOIL:
		return "loose, to haul away";
	case NOTE_ROLL:
		return say(report, "whole; %s x %s", length,
			plain_length(report, note->lengths[1]));
	case NOTE_LINER:
		return say(report, "%s roll%s of %s x %s", plain_count(report, note->count),
			note->count == 1 ? "" : "s", length,
			plain_length(report, note->lengths[1]));
	case NOTE_PIECE:
		return say(report, "of %s, by the cut list", length);
	case NOTE_PANEL:
		return fence_note(report, say(report, "%s: %s wide between posts", note->name,
			plain_inches(report, note->lengths[0])), note, "of them cut up");
	case NOTE_LEAF:
		return fence_note(report, note->name, note, "more from offcuts");
	case NOTE_CONCRETE:
		return concrete_note(report, note);
	case NOTE_BRACKET:
		return "2 to a rail of a panel";
	case NOTE_HINGE:
		return "2 to a leaf";
	case NOTE_LATCH:
		return "1 to a gate";
	case NOTE_BOLT:
		return "1 to a gate of two leaves";
	}
	return NULL;
}

const char *item_note(const struct report *report, const struct item *item)
{
	const char *note = note_words(report, &item->note);

	if (item->reused <= 0)
		return note;
	return say(report, "%s%s%s is dug here", note ? note : "", note ? "; " : "",
		plain_volume(report, item->reused));
}

/* ---- Packs ----------------------------------------------------------------------------------- */

bool pack_is_single(const struct pack *pack)
{
	return pack->unit == UNIT_EACH && pack->size <= 1;
}

const char *item_packs(const struct report *report, const struct item *item)
{
	const struct pack *pack = item->pack;
	int64_t count = llround(item->packs);
	const char *packs;

	if (pack->kind == PACK_BULK)
		return say(report, "%s in bulk", pack->unit == UNIT_M3 ?
			plain_volume(report, item->packs * pack->size) :
			plain_weight(report, item->packs * pack->size));
	packs = say(report, "%s %s%s", plain_count(report, count), pack_word(pack->kind),
		count == 1 ? "" : "s");
	return pack_is_single(pack) ? packs : say(report, "%s of %s", packs, pack->words);
}

const char *supplier_words(const struct book *book, int supplier)
{
	return supplier == NO_SUPPLIER ? "collected" : book->suppliers[supplier].name;
}

double item_lifted(const struct item *item)
{
	const struct pack *pack = item->pack;
	bool is_packed = pack && item->packs > 0 && pack->kind != PACK_BULK &&
		pack->kind != PACK_PALLET;

	if (item->order <= 0)
		return 0;
	if (is_packed)
		return item->weight / item->packs;
	return item_unit(item) == UNIT_EACH ? item->unit_weight : 0;
}
