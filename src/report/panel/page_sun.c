#include "report/panel/page_sun.h"
#include "report/words/figures.h"
#include "report/words/sun_words.h"
#include "takeoff/sun/sun_hours.h"

static void classes(struct page_maker *maker, const struct sun_hours *sun)
{
	const struct report *report = &maker->report;

	page_heading_line(maker, "Ground, and from how many h");
	for (enum sun_class class = SUN_FULL; class <= SUN_SHADE; class++)
		page_figure(maker, say(report, "%s, %s", capital(report,
			word_label(&sun_class_words[class])), sun_bound_words(report, class)),
			plain_area(report, survey_area(sun->class_cells[class], sun->scene.cell)));
}

void page_sun(struct page_maker *maker, const struct takeoff *takeoff)
{
	struct arena arena = ARENA_EMPTY;
	struct sun_hours sun;
	const char *untold = sun_untold_words(&maker->report);

	if (!sun_has_site(takeoff)) {
		page_note_line(maker, "No latitude: the card of the plot itself, in the list #, "
			"has a field for it.");
		return;
	}
	if (sun_count_usual(&sun, &arena, takeoff)) {
		page_note_line(maker, sun.latitude < 0 ?
			"In the mean of a day, 21 September to 21 March, under a clear sky." :
			"In the mean of a day, 21 March to 21 September, under a clear sky.");
		classes(maker, &sun);
		if (takeoff->plot.details.around.shades.count > 0)
			page_note_line(maker, "What casts shade counts as solid down to the "
				"ground, trees and hedges too.");
		if (untold)
			page_note_line(maker, untold);
		page_rows(maker, &sun_region_table, sun.regions, sun.region_count);
		maker->page->sun = sun_usual_steps(&sun, &maker->page->arena);
	}
	arena_clear(&arena);
}
