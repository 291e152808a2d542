#include "report/panel/pages.h"

static void bed(struct page_maker *maker, const struct fill *fill)
{
	const struct entry *entry = maker->takeoff->survey.regions[fill->region].entry;

	pages_heading(maker, "%s %s", pages_region(maker, fill->region), entry->name);
	if (fill->order > 0) {
		pages_length(maker, "Soil depth", fill->soil_depth);
		pages_volume(maker, "Soil in place", fill->soil);
		pages_volume(maker, "Soil to order", fill->order);
	}
	if (fill->mulch > 0)
		pages_volume(maker, "Mulch", fill->mulch);
}

void pages_fill(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;

	for (int i = 0; i < takeoff->item_count; i++) {
		if (takeoff->items[i].section != SECTION_FILL)
			continue;
		if (maker->page->count == 0)
			pages_heading(maker, "To order, all beds");
		pages_item(maker, &takeoff->items[i]);
	}
	for (int i = 0; i < takeoff->fill_count; i++)
		bed(maker, &takeoff->fills[i]);
	if (maker->page->count == 0)
		pages_note(maker, "Nothing to fill yet.");
}
