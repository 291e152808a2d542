#include "report/panel/page_setout.h"
#include "base/stop.h"
#include "report/text/setout_words.h"

/* A cell beside the string. */
static struct place string_cell(const struct takeoff *takeoff, const struct setout_string *string)
{
	int line = (int)(string->at / takeoff->survey.cell);

	return ground_nearest(&takeoff->plot.ground, string->is_upright ?
		(struct place){ line, 0 } : (struct place){ 0, line });
}

static void points(struct page_maker *maker, const struct setout *setout,
	const struct setout_string *string, int *listed)
{
	const struct report *report = &maker->report;
	struct setout_walk walk = setout_along(setout, string);
	struct setout_point point;

	for (; *listed < PAGE_ROWS_MOST && !stop_asked() && setout_next(&walk, &point); ++*listed)
		page_figure(maker, capital(report, untied(report,
			point_name_words(report, &point))), untied(report,
			point_place_words(report, string, &point)));
}

static void strings(struct page_maker *maker, const struct takeoff *takeoff,
	const struct setout *setout)
{
	const struct report *report = &maker->report;
	int all = setout->corner_count + setout->post_count + setout->gate_count, listed = 0;

	for (int i = 0; page_goes_on(maker, i, setout->string_count); i++) {
		const struct setout_string *string = &setout->strings[i];

		page_heading_at(maker, untied(report, string_place_words(report, string)),
			string_cell(takeoff, string));
		page_note_line(maker, untied(report, guides_words(report, setout, string)));
		points(maker, setout, string, &listed);
	}
	if (listed < all)
		page_note_line(maker, say(report, "%s more points: parterre setout prints them.",
			plain_count(report, all - listed)));
}

static void ties(struct page_maker *maker, const struct setout *setout)
{
	const struct report *report = &maker->report;

	for (int i = 0; i < setout->datum_tie_count; i++)
		page_figure(maker, say(report, "Datum from %s", setout->datum_ties[i]->name),
			untied(report, tape_words(report, setout->datum_ties[i]->length)));
	for (int i = 0; page_goes_on(maker, i, setout->more_tie_count); i++)
		page_note_line(maker, untied(report, say(report, "%s: %s", capital(report,
			tied_place_words(report, setout, setout->more_ties[i])),
			tie_words(report, setout->more_ties[i]))));
}

void page_setout(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct report *report = &maker->report;
	struct arena arena = ARENA_EMPTY;
	struct setout setout;

	if (takeoff->survey.region_count + takeoff->fences.count == 0) {
		page_note_line(maker, "Nothing to set out yet.");
		return;
	}
	setout = setout_of(report, &arena);
	page_note_line(maker, "From the plan's top left corner, in the order of pulling.");
	ties(maker, &setout);
	page_figure(maker, "Base line", plain_length(report, setout.width));
	page_figure(maker, "Diagonals of the plan", untied(report,
		tape_words(report, setout.diagonal)));
	page_note_line(maker, untied(report, square_words(report, &setout)));
	page_note_line(maker, untied(report, ends_words(report, &setout)));
	strings(maker, takeoff, &setout);
	arena_clear(&arena);
}
