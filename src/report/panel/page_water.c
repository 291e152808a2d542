#include "report/panel/page_water.h"
#include "report/words/figures.h"
#include "report/words/water_words.h"

static void supply(struct page_maker *maker, const struct watering *watering)
{
	page_figure(maker, watering->is_measured ? "Supply" : "Supply, assumed",
		plain_flow(&maker->report, watering->supply));
	page_row(maker, &watering_table, watering);
	if (!watering->is_measured)
		page_note_line(maker, "Measure the supply: nothing says yet what the tap gives.");
	if (!watering->has_tap)
		page_note_line(maker, "No tap is set: of the header only what lies in beds is "
			"counted.");
}

static void zones(struct page_maker *maker, const struct watering *watering)
{
	for (int i = 0; page_goes_on(maker, i, watering->zone_count); i++) {
		page_heading_line(maker, say(&maker->report, "Zone %s",
			plain_count(&maker->report, watering->zones[i].number)));
		page_row(maker, &water_zone_table, &watering->zones[i]);
	}
}

static void months(struct page_maker *maker, const struct watering *watering)
{
	const struct report *report = &maker->report;
	const char *even = water_even_words(report);
	int count = water_months(report) > 0 ? watering->month_count : 0;

	page_heading_line(maker, "In a week, all beds");
	if (*even)
		page_note_line(maker, even);
	for (int i = 0; i < count; i++)
		page_figure(maker, word_label(&month_words[i]), say(report, "%s, %s min",
			plain_water(report, watering->months[i].water),
			plain_count(report, watering->months[i].minutes)));
	page_note_line(maker, say(report, "New plants: %s.", water_new_words(report)));
}

void page_water(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct watering *watering = &takeoff->watering;

	if (watering->count == 0) {
		page_note_line(maker, "No bed is watered by drip lines yet.");
		return;
	}
	supply(maker, watering);
	page_items(maker, SECTION_WATER, "To order");
	zones(maker, watering);
	page_rows(maker, &watered_table, watering->list, watering->count);
	months(maker, watering);
}
