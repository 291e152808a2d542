#include "report/text/print.h"
#include "base/number.h"
#include "report/drawing/finished.h"

#include <math.h>
#include <string.h>

static const struct levelling *levelling_of(const struct report *report)
{
	return &report->takeoff->levelling;
}

/* Of so many no more than NAMED_MOST are listed. */
static void print_more(const struct report *report, int count)
{
	if (count > NAMED_MOST)
		print_lines(report, 0, 0, "and %s more; --json lists them.",
			plain_count(report, count - NAMED_MOST));
}

/* ---- What is told ---------------------------------------------------------------------------- */

static void print_told(const struct report *report)
{
	const struct levelling *levelling = levelling_of(report);
	const char *finished;

	if (levelling->step)
		print_lines(report, 0, 0, "Drops below the level string line were measured every "
			"%s: %s of them in the plan.", word_length(report, levelling->step),
			plain_count(report, levelling->point_count));
	else
		print_lines(report, 0, 0, "No drops are measured: what is dug is counted as if the "
			"ground lay as it is to be finished.");
	finished = finished_words(report);
	if (finished)
		print_lines(report, 0, 0, "%s", finished);
	else
		print_lines(report, 0, 0, "No other finished ground is told: it stays as it is, "
			"and all but walls is dug as deep as it would be on level ground.");
}

/* ---- Cut and fill ---------------------------------------------------------------------------- */

/* A net too small to be shown is none. */
static const char *net_words(const struct report *report, double net)
{
	const char *volume = word_volume(report, fabs(net));

	if (strcmp(volume, word_volume(report, 0)) == 0)
		return "as much is cut as filled";
	return say(report, "%s more is %s", volume,
		net < 0 ? "filled than cut" : "cut than filled");
}

/* "cut 2.3 cu yd, fill 3.0 cu ft; 2.2 cu yd more is cut than filled". */
static const char *cut_fill_words(const struct report *report, const struct cut_fill *volumes)
{
	if (volumes->fill <= 0)
		return say(report, "cut %s, nothing to fill", word_volume(report, volumes->cut));
	if (volumes->cut <= 0)
		return say(report, "fill %s, nothing to cut", word_volume(report, volumes->fill));
	return say(report, "cut %s, fill %s; %s", word_volume(report, volumes->cut),
		word_volume(report, volumes->fill), net_words(report, volumes->net));
}

static void print_volumes(const struct report *report)
{
	const struct cut_fills *volumes = &levelling_of(report)->volumes;

	print_note(report, "To the formation, cell by cell: %s.",
		cut_fill_words(report, &volumes->formation));
	if (volumes->finished.cut + volumes->finished.fill <= 0)
		return;
	print_lines(report, 0, 0, "To the finished ground, before anything is dug below it: %s. "
		"By unit areas, A/4 (h1 + 2 h2 + 3 h3 + 4 h4) on squares of %s: %s. The two nets "
		"are %s apart.",
		cut_fill_words(report, &volumes->finished),
		word_length(report, levelling_of(report)->step),
		cut_fill_words(report, &volumes->by_unit_areas),
		word_volume(report, levelling_of(report)->apart));
	print_explained(report, "Each cell is cut or filled by the height in its middle; where a "
		"line of the survey or the edge of what is dug crosses it, each part of it. How "
		"much is cut and filled depends on the method, since a unit area may have cuts at "
		"some corners and fills at others; the net does not. Open ground is graded too. "
		"Walls are level, and are dug so. Stone and the soil of lawns lie on the "
		"formation: they stay the same.");
}

/* ---- Low ground, paths, drops ---------------------------------------------------------------- */

/* "P1: path, 3.1 cu ft". */
static void print_filled(const struct report *report, const struct earthwork *work)
{
	for (int i = 0; i < work->fill_count && i < NAMED_MOST; i++) {
		const struct dig_fill *fill = &work->fills[i];

		print_lines(report, 0, 2, "%s: %s, %s", fill->region == NO_REGION ?
			"Other ground" : plain_region(report, fill->region),
			word_heading(&dig_words[fill->part]), word_volume(report, fill->fill));
	}
	print_more(report, work->fill_count);
}

static void print_low(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;
	const struct cut_fills *volumes = &levelling_of(report)->volumes;
	int64_t low = 0;

	if (work->fill <= 0)
		return;
	for (int i = 0; i < volumes->square_count; i++)
		low += !row_is_left_out(&low_table, &volumes->squares[i]);
	print_section(report, "Low ground");
	print_lines(report, 0, 0, "%s in place is filled up to the formation and tamped: it takes "
		"%s of what is dug, loose%s.", word_volume(report, work->fill),
		word_volume(report, work->fill_loose), work->fill_short <= 0 ? "" :
		say(report, "; for %s, in place, there is not enough: %s is to be brought, loose",
		word_volume(report, work->fill_short), word_volume(report, work->fill_bought)));
	print_filled(report, work);
	print_blank(report);
	if (low > NAMED_MOST)
		print_lines(report, 0, 0, "In %s squares of the survey; --json lists them.",
			plain_count(report, low));
	else
		print_rows(report, &low_table, volumes->squares, volumes->square_count, 0, NULL);
	print_explained(report, "A square begins so far across and down from the plan's top left "
		"corner. Sod under what is filled stays, grass down; fill in thin layers, each "
		"tamped.");
}

/* Open ground has no region. */
static void print_near_houses(const struct report *report, const struct falls *falls)
{
	static const struct table_column columns[] = {
		{ "Near a house", COLUMN_LEFT }, { "Least fall away", COLUMN_RIGHT },
	};
	struct hand_table table = hand_table(columns, 2, 0);

	for (int i = 0; i < falls->house_count && i < NAMED_MOST; i++) {
		const struct house_fall *fall = &falls->houses[i];

		TABLE_ROW(&table, fall->region == NO_REGION ? "open ground" :
			plain_region(report, fall->region),
			say(report, "%s %%", plain_decimal(report, fall->away, 2)));
		arena_clear(report->words);
	}
	hand_table_print(&table, report->out);
	print_more(report, falls->house_count);
}

static void print_falls(const struct report *report)
{
	const struct falls *falls = &levelling_of(report)->falls;

	if (falls->path_count + falls->house_count == 0)
		return;
	print_section(report, "Falls");
	print_alike(report, &path_fall_table, falls->paths, falls->path_count);
	if (falls->path_count > 0 && falls->house_count > 0)
		print_blank(report);
	print_near_houses(report, falls);
	print_explained(report, "Of paths the steepest from the middle of a cell to that of the "
		"next; near a house the least of all cells, straight away from it, under 0 towards "
		"it. Where water may run to, and how near a house or a neighbour, is a matter of "
		"local code.");
}

static void print_points(const struct report *report)
{
	const struct levelling *levelling = levelling_of(report);

	if (levelling->point_count == 0)
		return;
	print_section(report, "Drops below the string");
	print_rows(report, &level_point_table, levelling->points,
		least(levelling->point_count, NAMED_MOST), 0, NULL);
	print_more(report, levelling->point_count);
	print_explained(report, "So far across and down from the plan's top left corner. To check "
		"one, hold a staff upright on the ground there and read where the string crosses "
		"it: the more it reads, the lower the ground; under 0 is above the string. Dig "
		"until it reads what stands under formation: that is the finished ground less what "
		"is dug for what lies right and below of the spot.");
}

void print_levels(const struct report *report)
{
	const struct levelling *levelling = levelling_of(report);

	if (!levelling->is_told)
		return;
	print_told(report);
	if (levelling->step)
		print_volumes(report);
	print_low(report);
	print_falls(report);
	print_points(report);
}
