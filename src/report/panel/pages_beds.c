#include "report/panel/pages.h"
#include "base/show.h"
#include "takeoff/walls/advice.h"

/* How many beds that are alike in nothing get advice: each takes a few hundred trials. */
enum { ADVISED_MOST = 3 };

/* A bed that was advised on; others of its entry and size are told the same. */
struct advised {
	const struct region *bed;
	struct advice advice;
};

static void size_add(struct page_maker *maker, struct text *out, int columns, int rows)
{
	nm cell = maker->takeoff->survey.cell;

	show_length(out, columns * cell, maker->units);
	text_add(out, " x ");
	show_length(out, rows * cell, maker->units);
}

static int columns_of(const struct region *bed)
{
	return bed->most.x - bed->left + 1;
}

static int rows_of(const struct region *bed)
{
	return bed->most.y - bed->first_cell.y + 1;
}

/* "Cuts 8 pieces. None at 5 ft x 4 ft or 6 ft x 3 ft, or with cells of 8 in." */
static void tell(struct page_maker *maker, const struct wall *wall, const struct advice *advice)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < advice->size_count; i++) {
		text_add(&words, i ? " or " : "at ");
		size_add(maker, &words, advice->sizes[i].x, advice->sizes[i].y);
	}
	if (advice->cell) {
		text_add(&words, advice->size_count ? ", or " : "");
		text_add(&words, "with cells of ");
		show_length(&words, advice->cell, maker->units);
	}
	if (words.length)
		pages_note(maker, "Cuts %lld pieces; none %s.", (long long)wall->cut_pieces, words.bytes);
	else
		pages_note(maker, "Cuts %lld pieces; no size near does without.",
			(long long)wall->cut_pieces);
	text_fini(&words);
}

static void advise(struct page_maker *maker, const struct wall *wall, struct advised *advised,
	int *count)
{
	const struct region *bed = &maker->takeoff->survey.regions[wall->region];
	struct arena trials = ARENA_EMPTY;

	for (int i = 0; i < *count; i++) {
		const struct region *other = advised[i].bed;

		if (other->entry == bed->entry && other->cells == bed->cells &&
			other->perimeter == bed->perimeter && columns_of(other) == columns_of(bed) &&
			rows_of(other) == rows_of(bed)) {
			tell(maker, wall, &advised[i].advice);
			return;
		}
	}
	if (*count == ADVISED_MOST)
		return;
	advised[*count].bed = bed;
	advice_find(&advised[*count].advice, &trials, maker->plot, maker->takeoff, wall);
	tell(maker, wall, &advised[*count].advice);
	(*count)++;
	arena_clear(&trials);
}

static void bed_lines(struct page_maker *maker, int region)
{
	const struct region *bed = &maker->takeoff->survey.regions[region];
	struct text value = TEXT_EMPTY;
	nm cell = maker->takeoff->survey.cell;

	pages_heading(maker, "%s %s", pages_region(maker, region), bed->entry->name);
	size_add(maker, &value, columns_of(bed), rows_of(bed));
	pages_figure(maker, "Over all", &value);
	pages_area(maker, "Area", survey_area(bed->cells, cell));
	pages_length(maker, "All round", bed->perimeter * cell);
}

static void joinings(struct page_maker *maker)
{
	struct joining list[JOININGS_MOST];
	int count = advice_joinings(list, maker->takeoff);

	for (int i = 0; i < count; i++)
		pages_note(maker, "%s and %s as one bed would take about %lld blocks fewer.",
			pages_region(maker, list[i].region), pages_region(maker, list[i].other),
			(long long)list[i].blocks);
}

void pages_beds(struct page_maker *maker)
{
	const struct survey *survey = &maker->takeoff->survey;
	struct advised advised[ADVISED_MOST];
	int count = 0;

	for (int i = 0; i < survey->region_count; i++) {
		const struct wall *wall = takeoff_wall(maker->takeoff, i);

		if (survey->regions[i].entry->class != CLASS_BED)
			continue;
		bed_lines(maker, i);
		if (wall && wall->cut_pieces > 0)
			advise(maker, wall, advised, &count);
	}
	if (maker->page->count == 0)
		pages_note(maker, "No beds yet.");
	joinings(maker);
}
