#include "report/panel/pages.h"
#include "base/show.h"

/* Blocks go by their inches: 16 in, not 1 ft 4 in. */
static void sizes(struct text *out, const struct size *block, enum units units)
{
	show_inches(out, block->along, units);
	text_add(out, " x ");
	show_inches(out, block->across, units);
	text_add(out, " x ");
	show_inches(out, block->up, units);
}

/* What one block size comes to: bought, of which cut up, and what breaks. */
static void cutting(struct page_maker *maker, const struct cutting *cutting)
{
	struct text size = TEXT_EMPTY;

	sizes(&size, &cutting->block, maker->units);
	pages_heading(maker, "%s %s", cutting->use == USE_CAP ? "Cap" : "Block", size.bytes);
	text_fini(&size);
	pages_count(maker, "To order", cutting->bought + cutting->breakage);
	pages_count(maker, "of them spare", cutting->breakage);
	pages_count(maker, "Laid whole", cutting->whole);
	pages_count(maker, "Cut up", cutting->cut_blocks);
}

static void other_items(struct page_maker *maker)
{
	for (int i = 0; i < maker->takeoff->item_count; i++) {
		const struct item *item = &maker->takeoff->items[i];

		if (item->section == SECTION_WALLS && item->block.along == 0)
			pages_item(maker, item);
	}
}

static void wall(struct page_maker *maker, const struct wall *wall)
{
	struct text value = TEXT_EMPTY;

	pages_heading(maker, "%s %s", pages_region(maker, wall->region),
		maker->takeoff->survey.regions[wall->region].entry->name);
	pages_count(maker, "Courses", wall->courses);
	pages_count(maker, "Whole blocks", wall->whole_blocks);
	pages_count(maker, "Cut pieces", wall->cut_pieces);
	show_weight(&value, wall->weight, maker->units);
	pages_figure(maker, "Weight", &value);
}

void pages_walls(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;

	for (int i = 0; i < takeoff->cutting_count; i++)
		cutting(maker, &takeoff->cuttings[i]);
	other_items(maker);
	for (int i = 0; i < takeoff->not_laid_count; i++)
		pages_note(maker, "%s not laid out, about %lld blocks, in no total. A snag tells why.",
			pages_region(maker, takeoff->not_laid[i].region),
			(long long)takeoff->not_laid[i].about_blocks);
	for (int i = 0; i < takeoff->wall_count; i++)
		wall(maker, &takeoff->walls[i]);
	if (maker->page->count == 0)
		pages_note(maker, "No raised beds yet.");
}
