#include "report/panel/page_lines.h"
#include "report/panel/page_advice.h"
#include "report/panel/page_beds.h"
#include "report/panel/page_changed.h"
#include "report/panel/page_compare.h"
#include "report/panel/page_levels.h"
#include "report/panel/page_services.h"
#include "report/panel/page_setout.h"
#include "report/panel/page_sun.h"
#include "report/panel/page_water.h"
#include "report/words/figures.h"
#include "report/words/snag_lines.h"
#include "report/words/snag_words.h"
#include "report/words/sun_words.h"
#include "base/show.h"
#include "base/stop.h"

#include <assert.h>

/* ---- The pages ------------------------------------------------------------------------------- */

/* The unit is said once, above them all: names of entries need the room. */
static void area_line(struct page_maker *maker, const char *label, double area)
{
	struct text value = TEXT_EMPTY;

	show_area_bare(&value, area, maker->report.units);
	page_figure(maker, label, say_text(&maker->report, &value));
}

static void areas(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;

	page_note_line(maker, say(&maker->report, "In %s",
		show_area_unit(maker->report.units)->word));
	for (int i = 0; i < takeoff->areas.count; i++) {
		const struct area_row *area = &takeoff->areas.list[i];

		area_line(maker, say(&maker->report, "%c %s", area->letter, area->name),
			area->area);
	}
	area_line(maker, "In all",
		survey_area((int64_t)survey->columns * survey->rows, survey->cell));
}

static void edges(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;

	for (int a = 0; a < CLASSES; a++)
		for (int b = a; b < CLASSES; b++)
			if (survey->edges[a][b])
				page_figure(maker, say(&maker->report, "%s, %s",
					class_word((enum plot_class)a),
					class_word((enum plot_class)b)),
					plain_sides(&maker->report, survey->edges[a][b]));
	page_if_empty(maker, "No edges yet.");
}

static void walls(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct walls *walls = &takeoff->walls;

	page_rows(maker, &cutting_table, takeoff->cuttings.list, takeoff->cuttings.count);
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		if (item->section == SECTION_WALLS && size_is_none(&item->block))
			page_item(maker, item);
	}
	for (int i = 0; page_goes_on(maker, i, walls->not_laid_count); i++)
		page_note_at(maker, say(&maker->report,
			"%s not laid out, about %lld blocks, in no total. A snag tells why.",
			page_region(maker, walls->not_laid[i].region),
			(long long)walls->not_laid[i].about_blocks),
			page_region_place(maker, walls->not_laid[i].region));
	page_rows(maker, &wall_table, walls->list, walls->count);
	if (takeoff->wall_levels.count > 0)
		page_heading_line(maker, "Below the string line");
	page_rows(maker, &wall_level_table, takeoff->wall_levels.list, takeoff->wall_levels.count);
	page_if_empty(maker, "No raised beds yet.");
}

static void fill(struct page_maker *maker, const struct takeoff *takeoff)
{
	page_items(maker, SECTION_FILL, "To order, all beds");
	page_rows(maker, &fill_table, takeoff->fills.list, takeoff->fills.count);
	page_if_empty(maker, "Nothing to fill yet.");
}

static void stone(struct page_maker *maker, const struct takeoff *takeoff)
{
	page_items(maker, SECTION_STONE, "To order");
	page_items(maker, SECTION_LAWN, "To order, lawns");
	page_rows(maker, &stone_total_table, takeoff->stones.totals, STONE_KINDS);
	page_row(maker, &fabric_table, &takeoff->fabric);
	page_row(maker, &edging_table, &takeoff->edging);
	page_if_empty(maker, "No stone, edging or lawn yet.");
}

/* One figure for each purpose of digging; the text has them by region. */
static void dig(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct earthwork *work = &takeoff->earthwork;

	if (work->count == 0) {
		page_note_line(maker, "Nothing to dig yet.");
		return;
	}
	page_heading_line(maker, "In the ground");
	for (int i = 0; i < DIG_PARTS; i++)
		if (work->sums[i].bank > 0)
			page_figure(maker, word_label(&dig_words[work->sums[i].part]),
				plain_volume(&maker->report, work->sums[i].bank));
	page_row(maker, &earthwork_table, work);
	page_note_line(maker, "Have services marked before any digging.");
	if (takeoff->walls.not_laid_count > 0)
		page_note_line(maker, "Beds that are not laid out are in no total.");
}

static void fence(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct fencing *fences = takeoff->fences.list;

	page_items(maker, SECTION_FENCE, "To order, all fences");
	for (int i = 0; page_goes_on(maker, i, takeoff->fences.count); i++)
		page_row_at(maker, &fencing_table, &fences[i], fences[i].fence->runs[0].points[0]);
	page_if_empty(maker, "No fence yet.");
}

/* ---- Costs ----------------------------------------------------------------------------------- */

static void money_line(struct page_maker *maker, const char *label, money amount)
{
	page_figure(maker, label, plain_money(&maker->report, amount));
}

static void cost_day(struct page_maker *maker, const struct takeoff *takeoff,
	const struct day_cost *day)
{
	page_heading_line(maker, day->name);
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		const struct purchase *purchase = item->purchase;

		if (!purchase || purchase->day != (int)day->day || !purchase->is_priced)
			continue;
		money_line(maker, item_label(&maker->report, item), purchase->cost);
		page_note_line(maker, item_packs(&maker->report, item));
	}
	if (day->sum.delivery > 0)
		money_line(maker, "Delivery", day->sum.delivery);
}

static void unpriced(struct page_maker *maker, const struct takeoff *takeoff)
{
	if (takeoff->costs.unpriced == 0)
		return;
	page_heading_line(maker, "Without a price");
	page_note_line(maker, "Price of an item, in the list !, puts one in.");
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		const struct purchase *purchase = item_purchase(&takeoff->items, item);

		if (purchase && !purchase->is_priced)
			page_item(maker, item);
	}
}

static void no_book(struct page_maker *maker, const struct plot *plot)
{
	const struct value *named = block_value(&plot->details.head, HEAD_PRICES);

	if (named->set) {
		page_note_line(maker, say(&maker->report,
			"The price book %s is not there, or cannot be read.", named->as.text));
		page_note_line(maker, "Price of an item, in the list !, says why, or makes it.");
	} else {
		page_note_line(maker, "No price book: > names one.");
		page_note_line(maker, "Price of an item, in the list !, makes one.");
	}
}

static void costs(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct costs *costs = &takeoff->costs;

	if (!takeoff->book) {
		no_book(maker, &takeoff->plot);
		return;
	}
	page_heading_line(maker, say(&maker->report, "In %s", costs->currency));
	money_line(maker, "Goods", costs->goods);
	money_line(maker, "Delivery", costs->delivery);
	money_line(maker, costs->unpriced ? "Total of the priced" : "Total", costs->total);
	if (costs->unpriced)
		page_figure(maker, "Items without a price",
			plain_count(&maker->report, costs->unpriced));
	for (int i = 0; i < costs->day_count; i++)
		if (costs->days[i].is_any)
			cost_day(maker, takeoff, &costs->days[i]);
	unpriced(maker, takeoff);
}

/* ---- Snags ----------------------------------------------------------------------------------- */

/* "B1 at 3 ft, 2 ft 6 in and 3 images": from the plan's left and from its top. */
static const char *snag_place(const struct report *report, const struct snag_line *line)
{
	const struct snag *snag = line->snag;

	return say(report, "%s%sat %s%s", plain_region(report, snag->region),
		snag->region == NO_REGION ? "" : " ", plain_corner(report, snag->cell),
		snag_images_words(report, line));
}

/* All snags of one code, sorted together: how many, then the first of them and the rule. */
static void snag_code(struct page_maker *maker, const struct snag *snags, size_t count)
{
	const struct report *report = &maker->report;
	struct snag_lines lines;

	snag_lines_find(&lines, report, snags, count);
	page_figure(maker, snag_heading(report, snags->code), plain_count(report, (int64_t)count));
	for (int i = 0; i < lines.count; i++) {
		const struct snag *snag = lines.list[i].snag;

		page_note_at(maker, say(report, "%s: %s %s", snag_place(report, &lines.list[i]),
			snag_sentence(report, snag), snag_cure_sentence(report, snag)), snag->cell);
	}
	if (lines.more > 0)
		page_note_line(maker, say(report, "and %s more.", plain_count(report, lines.more)));
	page_note_line(maker, say(report, "Rule: %s", snag_source(snags->code)));
}

static void snags(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct snag_list *list = &takeoff->snags;

	for (size_t i = 0, next; i < list->count; i = next) {
		next = snag_next_code(list, i);
		snag_code(maker, &list->list[i], next - i);
	}
	page_if_empty(maker, "None found.");
}

static void planting(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct planting *plants = &takeoff->planting;
	const char *unchecked = sun_unchecked_words(takeoff);

	if (unchecked)
		page_note_line(maker, unchecked);
	page_items(maker, SECTION_PLANTS, "To order");
	page_rows(maker, &plant_table, plants->plants, plants->plant_count);
	page_rows(maker, &planting_table, plants->list, plants->count);
	page_if_empty(maker, "No plants yet.");
}

/* ---- All of them ----------------------------------------------------------------------------- */

static const struct {
	const char *name;
	void (*build)(struct page_maker *maker, const struct takeoff *takeoff);
	bool is_of_saved;
} table[] = {
	{ "Areas", areas, false }, { "Edges", edges, false }, { "Beds", page_beds, false },
	{ "Walls", walls, false }, { "Fill", fill, false }, { "Stone", stone, false },
	{ "Dig", dig, false }, { "Levels", page_levels, false },
	{ "Services", page_services, false }, { "Fence", fence, false },
	{ "Planting", planting, false }, { "Watering", page_water, false },
	{ "Set-out", page_setout, false },
	{ "Sun", page_sun, false },
	{ "Costs", costs, false }, { "Advice", page_advice, false },
	{ "Snags", snags, false }, { "Changed", page_changed, .is_of_saved = true },
};
enum { BY_HAND = sizeof table / sizeof *table };

/* The declared rows that have page `index` after those made by hand; NULL where there is none. */
static const struct shown *page_shown(int index)
{
	if (index < 0)
		return NULL;
	for (int i = 0; i < takeoff_shown_count; i++)
		if (takeoff_shown[i].title && index-- == 0)
			return &takeoff_shown[i];
	return NULL;
}

int pages_count(void)
{
	int count = 0;

	while (page_shown(count))
		count++;
	assert(BY_HAND + count <= PAGES_MOST);
	return BY_HAND + count;
}

const char *page_name(int page)
{
	const struct shown *shown = page_shown(page - BY_HAND);

	return page < BY_HAND ? table[page].name : shown ? shown->title : "";
}

bool page_is_of_saved(int page)
{
	return page < BY_HAND && table[page].is_of_saved;
}

static void page_build(struct page_maker *maker, int page)
{
	const struct shown *shown = page_shown(page - BY_HAND);
	const void *rows;
	int count;

	if (page < BY_HAND || !shown) {
		table[page].build(maker, maker->report.takeoff);
		return;
	}
	rows = shown_rows(shown, maker->report.takeoff, &count);
	page_rows(maker, shown->table, rows, count);
	page_if_empty(maker, "None yet.");
}

static void page_fini(struct page *page)
{
	arena_clear(&page->arena);
	*page = (struct page){ .is_made = false };
}

void pages_renew(struct pages *pages)
{
	for (int i = 0; i < PAGES_MOST; i++) {
		page_fini(&pages->before[i]);
		pages->before[i] = pages->pages[i];
		pages->pages[i] = (struct page){ .is_made = false };
	}
}

void pages_drop_saved(struct pages *pages)
{
	for (int i = 0; i < BY_HAND; i++)
		if (table[i].is_of_saved)
			page_fini(&pages->pages[i]);
}

bool pages_make(struct pages *pages, int page, const struct takeoff *takeoff,
	const struct plot *plot, const struct saved *saved)
{
	struct page *new = &pages->pages[page];
	struct page_maker maker = { .page = new, .saved = saved, .report = {
		.words = &new->arena, .plot = plot, .takeoff = takeoff,
		.units = plot_units(plot), .wording = WORDING_PANEL } };

	if (new->is_made)
		return true;
	page_build(&maker, page);
	if (pages->before[page].is_made)
		page_compare(new, &pages->before[page]);
	if (stop_asked())
		page_fini(new);
	else
		new->is_made = true;
	return new->is_made;
}

int pages_of_sun(void)
{
	int page = 0;

	while (table[page].build != page_sun)
		page++;
	return page;
}

const uint16_t *pages_sun(const struct pages *pages)
{
	return pages->pages[pages_of_sun()].sun;
}

void pages_fini(struct pages *pages)
{
	for (int i = 0; i < PAGES_MOST; i++) {
		page_fini(&pages->pages[i]);
		page_fini(&pages->before[i]);
	}
}
