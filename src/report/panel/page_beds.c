#include "report/panel/page_beds.h"
#include "base/stop.h"
#include "takeoff/advice/near.h"

/* How many beds, those alike counted once, get advice: each takes a few hundred trials. */
enum { ADVISED_MOST = 3, SIZES_TOLD = 2 };

/* A bed that has advice; others whose walls are laid like its own get the same. */
struct advised {
	const struct wall *wall;
	struct place sizes[SIZES_TOLD];
	int size_count;
	nm cell; /* 0: none */
};

static int columns_of(const struct region *bed)
{
	return bed->most.x - bed->left + 1;
}

static int rows_of(const struct region *bed)
{
	return bed->most.y - bed->first_cell.y + 1;
}

/* "Cuts 8 pieces; none at 5 ft x 4 ft or 6 ft x 3 ft, or with cells of 8 in." */
static void advice_line(struct page_maker *maker, const struct wall *wall,
	const struct advised *advised)
{
	const struct report *report = &maker->report;
	long long pieces = wall->cut_pieces;
	const char *sizes = "", *cells = "";

	for (int i = 0; i < advised->size_count; i++)
		sizes = say(report, "%s%s%s", sizes, i ? " or " : "at ",
			plain_cells(report, advised->sizes[i].x, advised->sizes[i].y));
	if (advised->cell)
		cells = say(report, "%swith cells of %s", *sizes ? ", or " : "",
			plain_length(report, advised->cell));
	if (*sizes || *cells)
		page_note_line(maker, say(report, "Cuts %lld pieces; none %s%s.", pieces, sizes,
			cells));
	else
		page_note_line(maker, say(report, "Cuts %lld pieces; no size near does without.",
			pieces));
}

/* What is laid alike may be turned: then columns are rows. */
static bool is_alike(const struct survey *survey, const struct wall *a, const struct wall *b)
{
	return a->like == b->like && columns_of(&survey->regions[a->region]) ==
		columns_of(&survey->regions[b->region]);
}

static void advise(struct page_maker *maker, const struct wall *wall, struct advised *advised,
	int *count)
{
	const struct takeoff *takeoff = maker->report.takeoff;
	struct arena trials = ARENA_EMPTY;

	for (int i = 0; i < *count; i++) {
		if (is_alike(&takeoff->survey, advised[i].wall, wall)) {
			advice_line(maker, wall, &advised[i]);
			return;
		}
	}
	if (*count == ADVISED_MOST)
		return;
	advised += (*count)++;
	advised->wall = wall;
	advised->size_count = near_sizes(advised->sizes, SIZES_TOLD, &trials, takeoff, wall);
	advised->cell = near_cell(&trials, takeoff, wall);
	advice_line(maker, wall, advised);
	arena_clear(&trials);
}

static void bed_lines(struct page_maker *maker, int region)
{
	const struct report *report = &maker->report;
	const struct region *bed = &report->takeoff->survey.regions[region];
	nm cell = report->takeoff->survey.cell;

	page_heading_at(maker, say(report, "%s %s", page_region(maker, region), bed->entry->name),
		bed->first_cell);
	page_figure(maker, "Over all", plain_cells(report, columns_of(bed), rows_of(bed)));
	page_figure(maker, "Area", plain_area(report, survey_area(bed->cells, cell)));
	page_figure(maker, "All round", plain_length(report, bed->perimeter * cell));
}

static int beds_count(const struct survey *survey)
{
	int count = 0;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		count += survey->regions[i].entry->class == CLASS_BED;
	return count;
}

void page_beds(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;
	struct advised advised[ADVISED_MOST];
	int count = 0, beds = 0, all = beds_count(survey);

	for (int i = 0; page_goes_on(maker, beds, all); i++) {
		const struct wall *wall = walls_find(&takeoff->walls, i);

		if (survey->regions[i].entry->class != CLASS_BED)
			continue;
		beds++;
		bed_lines(maker, i);
		if (wall && wall->cut_pieces > 0)
			advise(maker, wall, advised, &count);
	}
	page_if_empty(maker, "No beds yet.");
}
