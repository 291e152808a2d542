#include "report/panel/page_levels.h"

static void volumes(struct page_maker *maker, const char *heading, const struct cut_fill *volumes)
{
	const struct report *report = &maker->report;

	page_heading_line(maker, heading);
	page_figure(maker, "Cut", plain_volume(report, volumes->cut));
	page_figure(maker, "Fill", plain_volume(report, volumes->fill));
}

static void measured(struct page_maker *maker, const struct levelling *levelling)
{
	volumes(maker, "To the formation, by cells", &levelling->volumes.formation);
	volumes(maker, "To finished ground, by cells", &levelling->volumes.finished);
	volumes(maker, "The same, by unit areas", &levelling->volumes.by_unit_areas);
	page_figure(maker, "Nets apart", plain_volume(&maker->report, levelling->apart));
}

/* The nearest cell to where low ground begins. */
static void low_ground(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct cut_fills *all = &takeoff->levelling.volumes;
	const struct report *report = &maker->report;
	nm cell = takeoff->survey.cell;

	if (takeoff->earthwork.fill <= 0)
		return;
	page_heading_line(maker, "Low ground, filled");
	for (int i = 0; page_goes_on(maker, i, all->square_count); i++) {
		const struct low_square *square = &all->squares[i];

		if (square->fill > 0)
			page_note_at(maker, say(report, "From %s across, %s down: %s, up to %s "
				"deep.", plain_length(report, square->right),
				plain_length(report, square->down),
				plain_volume(report, square->fill),
				plain_inches(report, square->deepest)),
				ground_nearest(&takeoff->plot.ground, (struct place){
				(int)(square->right / cell), (int)(square->down / cell) }));
	}
}

/* Open ground has no region. */
static void near_houses(struct page_maker *maker, const struct falls *falls)
{
	const struct report *report = &maker->report;

	if (falls->house_count > 0)
		page_heading_line(maker, "Near a house, least fall away");
	for (int i = 0; page_goes_on(maker, i, falls->house_count); i++) {
		const struct house_fall *fall = &falls->houses[i];

		page_figure(maker, fall->region == NO_REGION ? "open ground" :
			page_region(maker, fall->region),
			say(report, "%s %%", plain_decimal(report, fall->away, 2)));
	}
}

void page_levels(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct levelling *levelling = &takeoff->levelling;

	if (!levelling->is_told) {
		page_note_line(maker, "No levels and no finished ground are told.");
		return;
	}
	page_row(maker, &levelling_table, levelling);
	if (levelling->step > 0)
		measured(maker, levelling);
	else
		page_note_line(maker, "No drops are measured: all is dug as on level ground.");
	low_ground(maker, takeoff);
	page_rows(maker, &path_fall_table, levelling->falls.paths, levelling->falls.path_count);
	near_houses(maker, &levelling->falls);
}
