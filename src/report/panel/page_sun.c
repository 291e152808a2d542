#include "report/panel/page_sun.h"
#include "report/words/figures.h"
#include "report/words/sun_words.h"
#include "takeoff/sun/sun_usual.h"

#include <string.h>

static void classes(struct page_maker *maker, const struct sun_usual *sun)
{
	const struct report *report = &maker->report;

	page_heading_line(maker, "Ground, and from how many h");
	for (enum sun_class class = SUN_FULL; class <= SUN_SHADE; class++)
		page_figure(maker, say(report, "%s, %s", capital(report,
			word_label(&sun_class_words[class])), sun_bound_words(report, class)),
			plain_area(report, survey_area(sun->class_cells[class],
				report->takeoff->survey.cell)));
}

/* The page outlasts the takeoff. */
static const uint16_t *steps_keep(struct page_maker *maker, const struct sun_usual *sun)
{
	uint16_t *steps = arena_new(&maker->page->arena, sun->cells, sizeof *steps);

	memcpy(steps, sun->steps, sun->cells * sizeof *steps);
	return steps;
}

void page_sun(struct page_maker *maker, const struct takeoff *takeoff)
{
	struct arena arena = ARENA_EMPTY;
	const struct sun_usual *sun;
	const char *untold = sun_untold_words(&maker->report);

	if (!sun_has_site(takeoff)) {
		page_note_line(maker, "No latitude: the card of the plot itself, in the list #, "
			"has a field for it.");
		return;
	}
	sun = sun_usual(takeoff, &arena);
	if (sun) {
		page_note_line(maker, sun_latitude(takeoff) < 0 ?
			"In the mean of a day, 21 September to 21 March, under a clear sky." :
			"In the mean of a day, 21 March to 21 September, under a clear sky.");
		classes(maker, sun);
		if (takeoff->plot.details.around.shades.count > 0)
			page_note_line(maker, "What casts shade counts as solid down to the "
				"ground, trees and hedges too.");
		if (untold)
			page_note_line(maker, untold);
		page_rows(maker, &sun_region_table, sun->regions, sun->region_count);
		maker->page->sun = steps_keep(maker, sun);
	}
	arena_clear(&arena);
}
