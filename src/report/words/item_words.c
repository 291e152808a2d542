#include "report/words/item_words.h"
#include "base/measure.h"
#include "base/number.h"
#include "takeoff/common/lifting.h"

#include <math.h>
#include <string.h>

const char *item_id(const struct report *report, const struct item *item)
{
	struct text id = TEXT_EMPTY;

	good_add_id(&id, item->good, item->name);
	return say_text(report, &id);
}

const char *good_name_words(const struct report *report, const char *name)
{
	char *words = arena_print(report->words, "%s", name);

	for (char *c = words; *c; c++)
		if (*c == '-')
			*c = ' ';
	return words;
}

const char *item_label(const struct report *report, const struct item *item)
{
	const char *label = good_row(item->good)->label;

	if (good_row(item->good)->varies == VARIES_BY_TITLE)
		return item->name;
	return label ? label : capital(report, good_name_words(report, item->name));
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

/* What its unit goes by. */
static double most_of(const struct item *item)
{
	return fmax(item->laid, item->order);
}

const struct show_unit *item_shown_unit(const struct report *report, const struct item *item)
{
	static const struct show_unit each = { "each", 1, 1, 2 };

	switch (item_unit(item)) {
	case UNIT_EACH:
		break;
	case UNIT_M:
		return show_length_unit(report->units);
	case UNIT_M2:
		return show_area_unit(report->units);
	case UNIT_M3:
		return show_volume_unit(most_of(item), report->units);
	case UNIT_KG:
		return show_weight_unit(most_of(item), report->units);
	}
	return &each;
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
		return plain_volume_like(report, amount, most_of(item));
	case UNIT_KG:
		break;
	}
	return plain_weight(report, amount);
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

/* "Pickets: made to size; 2 more from offcuts". */
static const char *fence_note(const struct report *report, const struct note *note,
	const char *fit, const char *more)
{
	return note->count == 0 ? say(report, "%s: %s", note->name, fit) :
		say(report, "%s: %s; %lld %s", note->name, fit, (long long)note->count, more);
}

const char *item_fit(const struct report *report, const struct item *item)
{
	const struct note *note = &item->note;
	const char *length = word_length(report, note->lengths[0]);

	switch (note->kind) {
	case NOTE_PANEL:
		return say(report, "%s centre to centre, %s wide between posts",
			word_length(report, note->lengths[1]),
			word_inches(report, note->lengths[0]));
	case NOTE_ROLL:
		return say(report, "%s x %s", length, word_length(report, note->lengths[1]));
	case NOTE_PIECE:
		return say(report, "%s long", length);
	case NOTE_CARTRIDGE:
		return say(report, "for %s of bead", length);
	case NOTE_LEAF:
		return "made to size";
	default:
		return "";
	}
}

static const char *plant_note(const struct report *report, const struct note *note)
{
	const char *spare = note->percent == 0 ? "none to spare" :
		percent(report, note, "spare of drifts");

	return note->lengths[0] == 0 ? spare :
		say(report, "pot %s across; %s", plain_length(report, note->lengths[0]), spare);
}

static const char *cartridge_note(const struct report *report, const struct note *note)
{
	return say(report, "whole; bead %s each%s", plain_length(report, note->lengths[0]),
		note->percent == 0 ? "" : say(report, "; %s", percent(report, note, "spare")));
}

/* What some notes say whatever their figures. */
static const char *const fixed[] = {
	[NOTE_SPOIL] = "loose, to haul away", [NOTE_BRACKET] = "2 to a rail of a panel",
	[NOTE_HINGE] = "2 to a leaf", [NOTE_LATCH] = "1 to a gate",
	[NOTE_LICENCE] = "which kind, and who fits it: local code",
	[NOTE_BOLT] = "1 to a gate of two leaves",
};

static const char *note_words(const struct report *report, const struct item *item)
{
	const struct note *note = &item->note;
	const char *fit = untied(report, item_fit(report, item));
	const char *length = plain_length(report, note->lengths[0]);

	switch (note->kind) {
	case NOTE_BREAKAGE:
		return say(report, "long x deep x high; %s%s", percent(report, note, "breakage"),
			note->count == 0 ? "" : say(report, ", %lld at least",
			(long long)note->count));
	case NOTE_SETTLEMENT:
		return note->percent == 0 ? "settlement by the mix" :
			percent(report, note, "settlement");
	case NOTE_TRIMMING:
		return percent(report, note, "trimming");
	case NOTE_STONE:
		return stone_note(report, note);
	case NOTE_CARTRIDGE:
		return cartridge_note(report, note);
	case NOTE_ROLL:
		return say(report, "whole; %s", fit);
	case NOTE_LINER:
		return say(report, "%s roll%s of %s x %s", plain_count(report, note->count),
			note->count == 1 ? "" : "s", length,
			plain_length(report, note->lengths[1]));
	case NOTE_PLANT:
		return plant_note(report, note);
	case NOTE_STAKE:
		return say(report, "every %s of drip tube and at its ends", length);
	case NOTE_PIECE:
		return say(report, "of %s, by the cut list", length);
	case NOTE_PANEL:
		return fence_note(report, note, fit, "of them cut up");
	case NOTE_LEAF:
		return fence_note(report, note, fit, "more from offcuts");
	case NOTE_CONCRETE:
		return concrete_note(report, note);
	default:
		return fixed[note->kind];
	}
}

const char *item_note(const struct report *report, const struct item *item)
{
	const struct purchase *purchase = item_purchase(&report->takeoff->items, item);
	const char *note = note_words(report, item);

	if (purchase && purchase->is_own_price)
		note = say(report, "%s%sprice by the plot", note ? note : "", note ? "; " : "");
	if (item->reused <= 0)
		return note;
	return say(report, "%s%s%s is dug here", note ? note : "", note ? "; " : "",
		plain_volume(report, item->reused));
}

/* ---- Packs ----------------------------------------------------------------------------------- */

static const double QUARTER_TON = 500 * KG_PER_POUND, QUARTER_TONNE = 250;
static const double CUBIC_YARD = 27 * M3_PER_CUBIC_FOOT;

/* "1 1/4 tons": in quarters where that is exact, else to the hundredth. */
static const char *quarters(const struct report *report, double amount, const char *one,
	const char *many)
{
	static const char *const parts[] = { "", "1/4", "1/2", "3/4" };
	int64_t count = llround(amount * 4), ones = count / 4;
	const char *part = parts[count % 4];

	if (fabs(amount * 4 - (double)count) > 1e-6)
		return say(report, "%s %s", plain_decimal(report, amount, 2), many);
	if (ones == 0 && count > 0)
		return say(report, "%s %s", part, one);
	return say(report, "%s%s%s %s", plain_count(report, ones), *part ? " " : "", part,
		count == 4 ? one : many);
}

static const char *loose_weight(const struct report *report, double weight)
{
	bool is_metric = report->units == UNITS_METRIC;
	double count = weight / (is_metric ? QUARTER_TONNE : QUARTER_TON);

	if (fabs(count - round(count)) > 1e-6)
		return plain_weight(report, weight);
	return quarters(report, count / 4, is_metric ? "t" : "ton", is_metric ? "t" : "tons");
}

static const char *loose_words(const struct report *report, const struct bought *bought)
{
	double amount = bought->packs * bought->pack->size;
	bool is_metric = report->units == UNITS_METRIC;

	switch (bought->pack->unit) {
	case UNIT_M3:
		return quarters(report, is_metric ? amount : amount / CUBIC_YARD,
			is_metric ? "m3" : "cu yd", is_metric ? "m3" : "cu yd");
	case UNIT_KG:
		return loose_weight(report, amount);
	case UNIT_M2:
		amount = is_metric ? amount : amount / area_of(NM_PER_FOOT, NM_PER_FOOT);
		return say(report, "%s %s", fabs(amount - round(amount)) > 1e-6 ?
			plain_decimal(report, amount, 2) : plain_count(report, llround(amount)),
			show_area_unit(report->units)->word);
	case UNIT_M:
	case UNIT_EACH:
		break;
	}
	return plain_length(report, llround(amount * (double)NM_PER_M));
}

static bool is_single(const struct pack *pack)
{
	return pack->unit == UNIT_EACH && strcmp(pack->words, "1") == 0;
}

const char *pack_words(const struct report *report, const struct pack *pack)
{
	return say(report, "%s %s", pack_word(pack->kind), pack->words);
}

const char *bought_words(const struct report *report, const struct bought *bought)
{
	const struct pack *pack = bought->pack;
	int64_t count = llround(bought->packs);
	const char *packs;

	if (pack->kind == PACK_BULK)
		return loose_words(report, bought);
	packs = say(report, "%s %s%s", plain_count(report, count), pack_word(pack->kind),
		count == 1 ? "" : pack->kind == PACK_BOX ? "es" : "s");
	return is_single(pack) ? packs : say(report, "%s of %s", packs, pack->words);
}

const char *item_order(const struct report *report, const struct item *item)
{
	const struct item_list *items = &report->takeoff->items;
	struct text words = TEXT_EMPTY;

	if (!item_purchase(items, item))
		return "-";
	if (!item->purchase)
		return say(report, "with %s",
			item_sized_label(report, &items->list[item->with]));
	for (int i = 0; i < item->purchase->count; i++) {
		const struct bought *bought = &item->purchase->list[i];
		bool is_count = is_single(bought->pack) && bought->pack->kind == PACK_PIECE &&
			item->purchase->count == 1;

		text_print(&words, "%s%s", i ? " + " : "", is_count ?
			plain_count(report, llround(bought->packs)) :
			bought_words(report, bought));
	}
	return say_text(report, &words);
}

const char *item_packs(const struct report *report, const struct item *item)
{
	const struct purchase *purchase = item->purchase;
	struct text words = TEXT_EMPTY;

	for (int i = 0; purchase && i < purchase->count; i++)
		text_print(&words, "%s%s, %s", i ? "; " : "",
			bought_words(report, &purchase->list[i]), supplier_words(
			report->takeoff->book, purchase->list[i].pack->supplier));
	if (purchase && purchase->is_own_price)
		text_add(&words, "; price by the plot");
	return say_text(report, &words);
}

const char *item_spec(const struct report *report, const struct item *item)
{
	const struct purchase *purchase = item_purchase(&report->takeoff->items, item);

	return purchase ? purchase->spec : "";
}

const char *supplier_words(const struct book *book, int supplier)
{
	return supplier == NO_SUPPLIER ? "collected" : book->suppliers[supplier].name;
}

double item_lifted(const struct item *item)
{
	double heaviest = item->order > 0 && item_unit(item) == UNIT_EACH ? item->unit_weight : 0;

	for (int i = 0; item->purchase && i < item->purchase->count; i++) {
		const struct bought *bought = &item->purchase->list[i];

		if (bought->pack->kind != PACK_BULK && bought->pack->kind != PACK_PALLET)
			heaviest = fmax(heaviest, bought->weight / bought->packs);
	}
	return heaviest;
}

bool item_is_in_book(const struct report *report, const struct item *item)
{
	const struct book *book = report->takeoff->book;
	const struct wanted_goods wanted = item_wanted(item);
	const struct goods *goods = book ? book_goods(book, &wanted) : NULL;

	return goods && goods->pack_count > 0;
}

bool item_is_heavy(const struct report *report, const struct item *item)
{
	return item_lifted(item) > lift_most(report->units) * (1 + 1e-9);
}
