#include "report/text/print.h"
#include "report/words/snag_words.h"
#include "report/words/sun_words.h"
#include "takeoff/fence/fence_values.h"

#include <ctype.h>

/* Whether any goods are weighed by the density. */
static bool has_goods(const struct item_list *items, enum attribute density)
{
	for (size_t i = 0; i < items->count; i++)
		if (good_density(items->list[i].good, items->list[i].name) == density)
			return true;
	return false;
}

/* Whether any goods are bought in bulk, in steps that the book does not set. */
static bool has_bulk(const struct item_list *items)
{
	for (size_t i = 0; i < items->count; i++) {
		const struct purchase *purchase = items->list[i].purchase;

		for (int j = 0; purchase && j < purchase->count; j++) {
			const struct pack *pack = purchase->list[j].pack;

			if (pack->kind == PACK_BULK && pack->unit == UNIT_M3 && pack->step <= 0)
				return true;
		}
	}
	return false;
}

static bool matters(const struct report *report, const struct block *block, enum attribute a)
{
	const struct takeoff *takeoff = report->takeoff;
	int64_t subsoil = block_number(takeoff->allow, ALLOW_SUBSOIL);

	switch (attribute_row(a)->subject) {
	case SUBJECT_ANY:
		return true;
	case SUBJECT_NONE:
		return false;
	case SUBJECT_RAISED:
		return block_number(block, BED_BUILD) == BUILD_RAISED;
	case SUBJECT_LEVEL:
		return block_number(block, BED_BUILD) != BUILD_RAISED;
	case SUBJECT_LOAM:
		return subsoil == SUBSOIL_LOAM;
	case SUBJECT_CLAY:
		return subsoil == SUBSOIL_CLAY;
	case SUBJECT_SAND:
		return subsoil == SUBSOIL_SAND;
	case SUBJECT_GOODS:
		return has_goods(&takeoff->items, a);
	case SUBJECT_BULK:
		return has_bulk(&takeoff->items);
	case SUBJECT_WATER:
		return takeoff_has(takeoff, SUBJECT_WATER) && (block->kind != BLOCK_BED ||
			a == BED_WATER || block_number(block, BED_WATER) == WATER_DRIP);
	case SUBJECT_SLEEVE:
		return takeoff_has(takeoff, SUBJECT_SERVICE) ||
			takeoff->watering.sleeve_length > 0;
	case SUBJECT_HOUSE:
		return report->plot->details.around.houses.count > 0;
	default:
		return takeoff_has(takeoff, attribute_row(a)->subject);
	}
}

/* Of an entry for beds that has a cell. */
static struct embed_range embed_in_force(const struct report *report, const struct block *bed)
{
	const struct areas *areas = &report->takeoff->areas;
	int i = 0;

	while (&areas->list[i].entry->block != bed)
		i++;
	return embed_range(&report->takeoff->embeds, areas->list[i].entry);
}

/* Of a block in force, the greatest of its beds' embeds; unset where it differs from bed to bed or
 * lawn to lawn otherwise. */
static struct value value_in_force(const struct report *report, const struct block *block,
	enum attribute a)
{
	const struct plot *plot = &report->takeoff->plot;

	if (a == BED_EMBED)
		return (struct value){ .set = true,
			.as.length = embed_in_force(report, block).most };
	if (a == FENCE_RAILS)
		return (struct value){ .set = true, .as.number = fence_rails(plot, block) };
	if (a == FENCE_DEPTH || a == FENCE_HOLE || a == FENCE_INSET || a == FENCE_GATE_POST)
		return (struct value){ .set = true,
			.as.length = fence_derived(plot, block, a) };
	return *block_value(block, a);
}

/* ---- Values ---------------------------------------------------------------------------------- */

/* How a value came to be what it is. */
enum origin { SET, MATTERS_MOST, USUAL };

#define EARTH (FACT(ZONES) | FACT(HOLES))
#define FILLED (FACT(RAISED) | FACT(REPLACED) | FACT(LAWN_SOIL))

/* Those that move figures most, and why one should look at them. */
static const struct {
	enum attribute attribute;
	uint64_t any; /* of these facts, for there to be such figures */
	const char *why;
} most[] = {
	{ ALLOW_TOPSOIL, EARTH, "dig a test hole" },
	{ ALLOW_SUBSOIL, EARTH, "swell, hours, bases" },
	{ ALLOW_FROST, FACT(BASE) | FACT(HOLES), "ask locally; it sets bases and posts" },
	{ ALLOW_SETTLEMENT, FILLED, "more soil to buy" },
	{ ALLOW_BREAKAGE, FACT(WALLS), "more blocks to buy" },
	{ ALLOW_COMPACTION_FINES, FACT(BASE) | FACT(FINES), "more stone to buy" },
	{ BED_EMBED, FACT(WALLS), "walls, dig" }, { BED_BASE, FACT(WALLS), "stone, dig" },
	{ PATH_BASE, FACT(PATHS), "stone, dig" }, { LAWN_TOPSOIL, EARTH, "soil, dig" },
	{ ALLOW_SUPPLY, FACT(WATER), "zones; time a bucket at the tap" },
	{ PLANT_SPACING, FACT(PLANTS), "how many fill a bed" },
	{ FENCE_DEPTH, FACT(HOLES), "posts, concrete; local code" },
};
enum { MOST = sizeof most / sizeof *most };

static const char *why_of(const struct report *report, enum attribute a)
{
	for (int i = 0; i < MOST; i++)
		if (most[i].attribute == a)
			return (report->takeoff->work.facts & most[i].any) ? most[i].why : NULL;
	return NULL;
}

/* A block as the plot has it, and as it is in force. */
struct assumed {
	const char *heading; /* "" for the whole plot */
	const struct block *own, *block;
};

static bool is_of_book(const struct report *report, const struct assumed *assumed, enum attribute a)
{
	const struct book *book = report->takeoff->book;

	return assumed->own->kind == BLOCK_ALLOW && book && block_value(&book->allow, a)->set;
}

static enum origin origin_of(const struct report *report, const struct assumed *assumed,
	enum attribute a)
{
	if (block_value(assumed->own, a)->set || is_of_book(report, assumed, a))
		return SET;
	return why_of(report, a) ? MATTERS_MOST : USUAL;
}

/* "up to 3 in"; "by what is laid". */
static const char *value_words(const struct report *report, const struct block *block,
	enum attribute a)
{
	const struct value value = value_in_force(report, block, a);
	struct text words = TEXT_EMPTY;

	if (a == BED_EMBED && embed_in_force(report, block).least < value.as.length)
		text_add(&words, "up to ");
	if (!value.set && block->kind == BLOCK_PLANT)
		text_add(&words, attribute_derived(a, report->units));
	else if (value.set)
		value_write(&words, &attribute_row(a)->rule, &value, report->units);
	else
		text_add(&words, "by what is laid");
	return say_text(report, &words);
}

/* A copy in which each number is tied to the word behind it: "10 % under 500 sq ft". */
static const char *numbers_tied(const struct report *report, const char *words)
{
	char *copy = arena_print(report->words, "%s", words);

	for (char *c = copy; *c; c++)
		if (*c == ' ' && c > copy && isdigit((unsigned char)c[-1]))
			*c = PAGE_TIE;
	return copy;
}

/* "Saw kerf 1/8 in", with what it rests on. */
static const char *assumed_words(const struct report *report, const struct assumed *assumed,
	enum attribute a, enum origin origin)
{
	const char *source = attribute_source(a, report->units);
	const char *from = source ? source : attribute_derived(a, report->units);
	const char *value = say(report, "%s %s", attribute_row(a)->label,
		tied(report, value_words(report, assumed->block, a)));

	if (origin == SET && a == PLANT_PRICE && !report->takeoff->book)
		return say(report, "%s (in no sum without a price book)", value);
	if (origin == SET)
		return say(report, "%s%s", value, is_of_book(report, assumed, a) &&
			!block_value(assumed->own, a)->set ? " (price book)" : "");
	if (!block_value(assumed->block, a)->set && assumed->block->kind == BLOCK_PLANT)
		return value;
	return from ? say(report, "%s (%s)", value, numbers_tied(report, from)) : value;
}

/* Values of one origin, under a heading of their own. */
struct listing {
	enum origin origin;
	const char *heading;
	bool is_headed;
};

/* The heading, before the first of them: none where there are none. */
static void begin(const struct report *report, struct listing *listing)
{
	if (!listing->is_headed)
		print_lines(report, 0, 0, "%s", listing->heading);
	listing->is_headed = true;
}

/* All of the block that came so, one after the other. */
static void print_block(const struct report *report, const struct assumed *assumed,
	struct listing *listing)
{
	enum origin origin = listing->origin;
	const struct block *block = assumed->block;
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < assumed->own->notes.count && origin == SET; i++)
		text_print(&words, "%sNote: %s", i ? "; " : "", assumed->own->notes.texts[i]);
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		if (matters(report, block, a) && origin_of(report, assumed, a) == origin)
			text_print(&words, "%s%s", words.length ? "; " : "",
				assumed_words(report, assumed, a, origin));
	if (words.length) {
		begin(report, listing);
		print_lines(report, 2, 4, "%s%s.", assumed->heading, words.bytes);
	}
	text_fini(&words);
}

/* A line for each, with its reason. */
static void print_most(const struct report *report, const struct assumed *assumed,
	struct listing *listing)
{
	const struct block *block = assumed->block;

	for (int i = 0; i < MOST; i++) {
		enum attribute a = most[i].attribute;

		if (attribute_block(a) != block->kind || !matters(report, block, a) ||
			origin_of(report, assumed, a) != listing->origin)
			continue;
		begin(report, listing);
		print_lines(report, 2, 4, "%s%s: %s.", assumed->heading,
			assumed_words(report, assumed, a, listing->origin), most[i].why);
	}
}

/* ---- Blocks ---------------------------------------------------------------------------------- */

static bool is_laid(const struct area_row *area)
{
	return area->cells > 0 && area->entry;
}

static void print_entries(const struct report *report, struct listing *listing,
	void (*print)(const struct report *, const struct assumed *, struct listing *))
{
	const struct areas *areas = &report->takeoff->areas;

	for (int i = 0; i < areas->count; i++) {
		const struct area_row *area = &areas->list[i];
		struct text heading = TEXT_EMPTY;

		if (!is_laid(area))
			continue;
		text_print(&heading, "%s (%c): ", area->name, area->letter);
		print(report, &(struct assumed){ heading.bytes,
			&plot_entry(report->plot, area->letter)->block, &area->entry->block },
			listing);
		text_fini(&heading);
	}
}

/* Those that stand somewhere. */
static void print_plants(const struct report *report, struct listing *listing,
	void (*print)(const struct report *, const struct assumed *, struct listing *))
{
	const struct planting *planting = &report->takeoff->planting;

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];
		struct text heading = TEXT_EMPTY;

		if (sum->count == 0)
			continue;
		text_print(&heading, "%s (%c): ", sum->name, sum->letter);
		print(report, &(struct assumed){ heading.bytes,
			&report->plot->details.plants.items[i].block, &sum->plant->block },
			listing);
		text_fini(&heading);
	}
}

static void print_all(const struct report *report, enum origin origin, const char *title,
	void (*print)(const struct report *, const struct assumed *, struct listing *))
{
	const struct takeoff *takeoff = report->takeoff;
	struct listing listing = { origin, title, false };

	print(report, &(struct assumed){ "", &report->plot->details.allow,
		takeoff->allow }, &listing);
	print_entries(report, &listing, print);
	for (int i = 0; i < takeoff->fences.count; i++) {
		const struct fence *fence = takeoff->fences.list[i].fence;
		size_t at = (size_t)(fence - takeoff->plot.details.fences);
		struct text heading = TEXT_EMPTY;

		text_print(&heading, "%s: ", fence->name);
		print(report, &(struct assumed){ heading.bytes,
			&report->plot->details.fences[at].block, &fence->block }, &listing);
		text_fini(&heading);
	}
	print_plants(report, &listing, print);
}

static void print_rules(const struct report *report)
{
	print_explained(report, "%s Blocks are square-ended, without lip or setback; caps do not "
		"overhang. Walls stand inside the bed's outline, outer face on it, all round each "
		"bed. Joints stand a quarter block or more from those of the course below "
		"(" RUNNING_BOND_SOURCE "). A fixture fills its cells at ground level. Soil is "
		"counted between the walls by the depth really filled: the wall's height less what "
		"is left free at the top, the mulch, and what of the wall is in the ground where "
		"that stays undug inside, but not over the base.", report->units == UNITS_IMPERIAL ?
		"A block's size is as laid, face plus joint: measure one. A nominal 16 in block "
		"that measures 15 5/8 in leaves an 8 ft side 2 1/4 in short." :
		"A block's size is as laid, face plus joint: measure one. A nominal 400 mm block "
		"that measures 390 mm leaves a 4 m side 100 mm short.");
}

/* ---- The whole ------------------------------------------------------------------------------- */

/* All else, or where to find it. */
static void print_usual(const struct report *report)
{
	if (report->is_whole) {
		print_lines(report, 0, 0, "All else is as usual: takeoff --only assumed lists it, "
			"and how all is reckoned.");
		return;
	}
	print_all(report, USUAL, "All else as usual: common practice, no published source, unless "
		"one is named. Set your own in the plot.", print_block);
}

void print_assumed(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	bool has_any = takeoff->fences.count > 0 || takeoff_has(takeoff, SUBJECT_PLANTS);
	const char *unchecked = sun_unchecked_words(takeoff);

	for (int i = 0; i < takeoff->areas.count; i++)
		has_any = has_any || is_laid(&takeoff->areas.list[i]);
	if (!has_any)
		return;
	print_all(report, SET, "Set in the plot or the price book:", print_block);
	print_all(report, MATTERS_MOST, "Usual values that matter most, to check (common "
		"practice, no published source):", report->is_whole ? print_block : print_most);
	print_usual(report);
	if (unchecked)
		print_explained(report, "%s", unchecked);
	if (takeoff->work.facts & FACT(WALLS))
		print_rules(report);
}
