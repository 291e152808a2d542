#include "report/panel/pages.h"
#include "base/show.h"

/* The unit stands once above them all: names of entries need the room. */
static void row(struct page_maker *maker, const char *label, double area)
{
	struct text value = TEXT_EMPTY;

	show_area_bare(&value, area, maker->units);
	pages_figure(maker, label, &value);
}

void pages_areas(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;
	const struct survey *survey = &takeoff->survey;

	pages_note(maker, "In %s", show_area_unit(maker->units));
	for (int i = 0; i < takeoff->area_count; i++) {
		const struct area_row *at = &takeoff->areas[i];

		row(maker, at->entry ? arena_print(maker->arena, "%c %s", at->entry->letter,
			at->entry->name) : ". Open ground", at->area);
	}
	row(maker, "In all", survey_area((int64_t)survey->columns * survey->rows, survey->cell));
}
