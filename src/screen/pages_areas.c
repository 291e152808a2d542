#include "screen/pages.h"

void pages_areas(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;
	const struct survey *survey = &takeoff->survey;

	for (int i = 0; i < takeoff->area_count; i++) {
		const struct area_row *row = &takeoff->areas[i];
		const char *label = row->entry ? arena_print(maker->arena, "%c %s",
			row->entry->letter, row->entry->name) : ". Open ground";

		pages_area(maker, label, row->area);
	}
	pages_area(maker, "In all",
		survey_area((int64_t)survey->columns * survey->rows, survey->cell));
}
