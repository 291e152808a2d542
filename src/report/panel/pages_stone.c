#include "report/panel/pages.h"
#include "base/show.h"

static void items(struct page_maker *maker, enum section section, const char *heading)
{
	bool is_first = true;

	for (int i = 0; i < maker->takeoff->item_count; i++) {
		const struct item *item = &maker->takeoff->items[i];

		if (item->section != section)
			continue;
		if (is_first)
			pages_heading(maker, "%s", heading);
		is_first = false;
		pages_item(maker, item);
	}
}

static void stone(struct page_maker *maker, const char *heading, const struct stone_total *total)
{
	struct text weight = TEXT_EMPTY;

	if (total->order <= 0)
		return;
	pages_heading(maker, "%s", heading);
	pages_volume(maker, "Compacted", total->compacted);
	pages_volume(maker, "Loose", total->loose);
	pages_volume(maker, "To order", total->order);
	show_weight(&weight, total->weight, maker->units);
	pages_figure(maker, "Weight", &weight);
}

static void fabric(struct page_maker *maker, const struct fabric *fabric)
{
	if (fabric->rolls == 0)
		return;
	pages_heading(maker, "Fabric");
	pages_area(maker, "Ground covered", fabric->area);
	pages_count(maker, fabric->way.is_upright ? "Pieces, upright" : "Pieces, level",
		fabric->pieces);
	pages_length(maker, "Of the rolls, used", fabric->used);
	pages_count(maker, "Joins", fabric->joins);
}

static void edging(struct page_maker *maker, const struct edging *edging)
{
	if (edging->runs == 0)
		return;
	pages_heading(maker, "Edging");
	pages_length(maker, "Length", edging->length);
	pages_count(maker, "Straight runs", edging->runs);
	pages_count(maker, "Pieces cut up", edging->cut_up);
}

void pages_stone(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;

	items(maker, SECTION_STONE, "To order");
	items(maker, SECTION_LAWN, "To order, lawns");
	stone(maker, "Bases and pads", &takeoff->stone_totals[STONE_KIND_BASE]);
	stone(maker, "Surface with fines", &takeoff->stone_totals[STONE_KIND_FINES]);
	stone(maker, "Surface, clean", &takeoff->stone_totals[STONE_KIND_CLEAN]);
	fabric(maker, &takeoff->fabric);
	edging(maker, &takeoff->edging);
	if (maker->page->count == 0)
		pages_note(maker, "No stone, edging or lawn yet.");
}
