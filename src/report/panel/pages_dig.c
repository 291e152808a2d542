#include "report/panel/pages.h"
#include "base/show.h"

/* What is dug for all of one purpose comes to one figure; who wants it by region finds it in the text. */
static void parts(struct page_maker *maker)
{
	static const char *const words[] = {
		[DIG_PATH] = "Paths", [DIG_WALL] = "Walls", [DIG_INSIDE] = "Inside beds",
		[DIG_PAD] = "Fixtures", [DIG_LAWN] = "Lawns", [DIG_BED] = "Soil replaced",
		[DIG_HOLES] = "Post holes",
	};
	const struct earthwork *work = &maker->takeoff->earthwork;
	double sums[DIG_PARTS] = { 0 };

	for (int i = 0; i < work->count; i++)
		sums[work->rows[i].part] += earth_sum(&work->rows[i].bank);
	pages_heading(maker, "In the ground");
	for (int i = 0; i < DIG_PARTS; i++)
		if (sums[i] > 0)
			pages_volume(maker, words[i], sums[i]);
	pages_volume(maker, "All", earth_sum(&work->bank));
}

static void kinds(struct page_maker *maker)
{
	const struct earthwork *work = &maker->takeoff->earthwork;

	pages_heading(maker, "Dug, loose");
	pages_volume(maker, "Sod", work->loose.sod);
	pages_volume(maker, "Topsoil", work->loose.topsoil);
	pages_volume(maker, "Subsoil", work->loose.subsoil);
	pages_volume(maker, "Reused in beds", work->reused);
}

static void spoil(struct page_maker *maker)
{
	const struct earthwork *work = &maker->takeoff->earthwork;
	struct text weight = TEXT_EMPTY;

	pages_heading(maker, "Spoil to haul away");
	pages_volume(maker, "Loose", work->spoil);
	show_weight(&weight, work->spoil_weight, maker->units);
	pages_figure(maker, "Weight", &weight);
	pages_count(maker, "Barrows", work->loads.barrow);
	pages_count(maker, "or pickup loads", work->loads.pickup);
	pages_count(maker, "or truck loads", work->loads.truck);
}

void pages_dig(struct page_maker *maker)
{
	if (maker->takeoff->earthwork.count == 0) {
		pages_note(maker, "Nothing to dig yet.");
		return;
	}
	parts(maker);
	kinds(maker);
	spoil(maker);
	pages_note(maker, "Have services marked before any digging.");
	if (maker->takeoff->not_laid_count > 0)
		pages_note(maker, "Beds that are not laid out are in no total.");
}
