#include "screen/pages.h"
#include "base/show.h"

/* "4 ft x 3 ft": the bed's length from left to right by that from top to bottom. */
static void bed_size(struct page_maker *maker, const struct region *bed)
{
	struct text value = TEXT_EMPTY;
	nm cell = maker->takeoff->survey.cell;

	show_length(&value, (bed->most.x - bed->left + 1) * cell, maker->units);
	text_add(&value, " x ");
	show_length(&value, (bed->most.y - bed->first_cell.y + 1) * cell, maker->units);
	pages_figure(maker, "Over all", &value);
}

static void bed(struct page_maker *maker, int region)
{
	const struct region *bed = &maker->takeoff->survey.regions[region];
	nm cell = maker->takeoff->survey.cell;

	pages_heading(maker, "%s %s", pages_region(maker, region), bed->entry->name);
	bed_size(maker, bed);
	pages_area(maker, "Area", survey_area(bed->cells, cell));
	pages_length(maker, "All round", bed->perimeter * cell);
}

void pages_beds(struct page_maker *maker)
{
	const struct survey *survey = &maker->takeoff->survey;

	for (int i = 0; i < survey->region_count; i++)
		if (survey->regions[i].entry->class == CLASS_BED)
			bed(maker, i);
	if (maker->page->count == 0)
		pages_note(maker, "No beds yet.");
}
