#include "report/text/print.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/text/setout_words.h"

#include <limits.h>

/* How much is listed: so many strings, points along each, levels of points, sizes of rectangles,
 * ties besides those of the datum. */
struct bounds {
	int strings, points, levels, sizes, ties;
};
static const struct bounds in_takeoff = { 60, 60, 240, 20, 20 };
static const struct bounds by_itself = { INT_MAX, INT_MAX, INT_MAX, INT_MAX, INT_MAX };

/* ---- Strings and points ---------------------------------------------------------------------- */

/* The table of strings with the points along them. */
struct strings {
	struct table table; /* first */
	const struct report *report;
	const struct setout *setout;
	int points_most, strings_most;
	int at; /* the next */
};

static int points_on(const struct setout_string *string)
{
	return string->corner_count + string->post_count + string->gate_count;
}

static void add_points(const struct strings *strings, const struct setout_string *string,
	struct text *words)
{
	struct setout_walk walk = setout_along(strings->setout, string);
	struct setout_point point;
	int count = 0, all = points_on(string);

	for (; count < strings->points_most && !stop_asked() && setout_next(&walk, &point);
	     count++)
		text_print(words, "%s%s%cat%c%s%c" MEASURED, count ? ", " : "",
			point_name_words(strings->report, &point), PAGE_TIE, PAGE_TIE,
			point_place_words(strings->report, string, &point), PAGE_TIE);
	if (count < all)
		text_print(words, " and%c%s%cmore", PAGE_TIE,
			plain_count(strings->report, all - count), PAGE_TIE);
}

/* How many strings stand in one row from there on: those without points that run one way. */
static int strings_in_row(const struct strings *strings)
{
	const struct setout *setout = strings->setout;
	const struct setout_string *first = &setout->strings[strings->at];
	int left = least(setout->string_count, strings->strings_most) - strings->at;
	int count = 1;

	for (; count < left && count < SETOUT_NAMED_MOST; count++)
		if (points_on(&first[count]) > 0 || first[count].use != first->use ||
		    first[count].is_upright != first->is_upright)
			break;
	return points_on(first) > 0 ? 1 : count;
}

/* "2 ft: B1; 6 ft: B1, P1": several strings without points. */
static const char *row_words(const struct strings *strings, int count)
{
	const struct report *report = strings->report;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < count; i++) {
		const struct setout_string *string = &strings->setout->strings[strings->at + i];

		text_print(&words, "%s%s: %s", i > 0 ? "; " : "", tape_words(report, string->at),
			guides_words(report, strings->setout, string));
	}
	return say_text(report, &words);
}

/* "B1, B2, P1: 1 at 2 ft ____, 2 at 6 ft ____" */
static const char *string_words(const struct strings *strings, const struct setout_string *string)
{
	struct text words = TEXT_EMPTY;

	text_add(&words, guides_words(strings->report, strings->setout, string));
	if (points_on(string) > 0) {
		text_add(&words, ": ");
		add_points(strings, string, &words);
	}
	return say_text(strings->report, &words);
}

static bool next_row(struct table *table, const char *cells[])
{
	struct strings *strings = (struct strings *)table;
	const struct setout *setout = strings->setout;
	const struct setout_string *string = &setout->strings[strings->at];
	int count;

	arena_clear(strings->report->words);
	if (strings->at == least(setout->string_count, strings->strings_most)) {
		strings->at = 0;
		return false;
	}
	count = strings_in_row(strings);
	cells[0] = count > 1 ? string->is_upright ? "across" : "down" :
		string_place_words(strings->report, string);
	cells[1] = count > 1 ? row_words(strings, count) : string_words(strings, string);
	strings->at += count;
	return true;
}

static void print_strings(const struct report *report, const struct setout *setout,
	const struct bounds *bounds)
{
	static const struct table_column columns[] = {
		{ "String", COLUMN_RIGHT },
		{ "What it guides: points as the tape meets them, measured " MEASURED,
			COLUMN_WRAPS },
	};
	struct strings strings = { .table = { columns, 2, 0, next_row, 0 }, .report = report,
		.setout = setout, .points_most = bounds->points, .strings_most = bounds->strings };

	print_blank(report);
	table_print(&strings.table, report->out);
	if (setout->string_count > bounds->strings)
		print_lines(report, 0, 0, "And %s more strings: parterre setout FILE has them all.",
			plain_count(report, setout->string_count - bounds->strings));
}

/* ---- Diagonals ------------------------------------------------------------------------------- */

/* "B1 ____ ____, B2 ____ ____" */
static const char *rectangle_words(const struct report *report,
	const struct setout_rectangle *rectangle)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < rectangle->count && i < SETOUT_NAMED_MOST; i++)
		text_print(&words, "%s%s%c" MEASURED "%c" MEASURED, i ? ", " : "",
			plain_region(report, rectangle->regions[i]), PAGE_TIE, PAGE_TIE);
	if (rectangle->count > SETOUT_NAMED_MOST)
		text_print(&words, " and%c%s%cmore", PAGE_TIE,
			plain_count(report, rectangle->count - SETOUT_NAMED_MOST), PAGE_TIE);
	return say_text(report, &words);
}

static void print_diagonals(const struct report *report, const struct setout *setout,
	const struct bounds *bounds)
{
	static const struct table_column columns[] = {
		{ "Rectangle", COLUMN_LEFT }, { "Both diagonals", COLUMN_RIGHT },
		{ "As measured", COLUMN_WRAPS },
	};
	struct hand_table table = hand_table(columns, 3, 0);

	TABLE_ROW(&table, plain_cells(report, setout->survey->columns, setout->survey->rows),
		tape_words(report, setout->diagonal), "plan\t" MEASURED "\t" MEASURED);
	for (int i = 0; i < setout->rectangle_count && i < bounds->sizes && !stop_asked(); i++) {
		const struct setout_rectangle *rectangle = &setout->rectangles[i];

		TABLE_ROW(&table, plain_cells(report, rectangle->columns, rectangle->rows),
			tape_words(report, rectangle->diagonal),
			rectangle_words(report, rectangle));
		arena_clear(report->words);
	}
	print_blank(report);
	hand_table_print(&table, report->out);
	if (setout->rectangle_count > bounds->sizes)
		print_lines(report, 0, 0, "And rectangles of %s more sizes: parterre setout FILE "
			"has them all.", plain_count(report,
			setout->rectangle_count - bounds->sizes));
}

/* ---- The whole ------------------------------------------------------------------------------- */

/* 12 ft 4 in from "House corner"; room for one that is taken on the ground. */
static const char *datum_tie_words(const struct report *report, const struct setout *setout,
	int tie)
{
	return tie < setout->datum_tie_count ? tie_words(report, setout->datum_ties[tie]) :
		say(report, "%s%cfrom%c%s", MEASURED MEASURED, PAGE_TIE, PAGE_TIE,
		MEASURED MEASURED MEASURED);
}

static void print_datum(const struct report *report, const struct setout *setout)
{
	print_lines(report, 0, 0, "Datum: the plan's top left corner, %s and %s, two fixed points. "
		"Base line: from the datum %s along the plan's top edge. Across is along it, down "
		"square to it. %s", datum_tie_words(report, setout, 0),
		datum_tie_words(report, setout, 1), tape_words(report, setout->width),
		square_words(report, setout));
}

/* A datum alone holds no direction. */
static bool may_turn(const struct setout *setout)
{
	for (int i = 0; i < setout->more_tie_count; i++)
		if (setout->more_ties[i]->at.x != 0 || setout->more_ties[i]->at.y != 0)
			return false;
	return setout->datum_tie_count > 0;
}

/* Tied too: 8 ft across, 0 in down: 9 ft from "Gate pier" ____; */
static void print_ties(const struct report *report, const struct setout *setout,
	const struct bounds *bounds)
{
	int shown = least(setout->more_tie_count, bounds->ties);
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < shown && !stop_asked(); i++)
		text_print(&words, "%s%s: %s%c" MEASURED, i ? "; " : "",
			tied_place_words(report, setout, setout->more_ties[i]),
			tie_words(report, setout->more_ties[i]), PAGE_TIE);
	if (shown < setout->more_tie_count)
		text_print(&words, "; and %s more: parterre setout FILE has them all",
			plain_count(report, setout->more_tie_count - shown));
	if (words.length)
		print_lines(report, 0, 0, "Tied too: %s.", words.bytes);
	if (may_turn(setout))
		print_lines(report, 0, 0, "Only the datum is tied, so the plan may turn about it: "
			"tape the base line's other end, %s across, to a fixed point too: "
			MEASURED MEASURED "%cfrom%c" MEASURED MEASURED MEASURED ".",
			tape_words(report, setout->width), PAGE_TIE, PAGE_TIE);
	text_fini(&words);
}

static void print_manner(const struct report *report, const struct setout *setout)
{
	print_note(report, "%s%s", ends_words(report, setout), faces_words(report));
	print_explained(report, "Pull strings in this order, take them down from the last to the "
		"first: those of paths go first, so that a barrow passes. Mark each on its boards. "
		"Offsets are to %s, each rounded by itself: do not add them up. Common practice, "
		"no published source; 3-4-5: Euclid, Elements, I 48.",
		report->units == UNITS_IMPERIAL ? "1/8\tin" : "1\tmm");
}

static bool has_any(const struct takeoff *takeoff)
{
	return takeoff->survey.region_count > 0 || takeoff->fences.count > 0;
}

static void print_sheet(const struct report *report, const struct bounds *bounds,
	void (*plan)(const struct report *report, const struct setout *setout))
{
	struct arena arena = ARENA_EMPTY;
	struct setout setout = setout_of(report, &arena);

	print_datum(report, &setout);
	print_ties(report, &setout, bounds);
	plan(report, &setout);
	print_strings(report, &setout, bounds);
	print_manner(report, &setout);
	print_setout_levels(report, &setout, bounds->levels);
	print_diagonals(report, &setout, bounds);
	arena_clear(&arena);
}

void print_setout(const struct report *report)
{
	if (has_any(report->takeoff))
		print_sheet(report, &in_takeoff, print_plan_numbered);
}

static void print_whole_plan(const struct report *report, const struct setout *setout)
{
	print_blank(report);
	print_drawing(report, setout);
}

void print_setout_all(const struct report *report)
{
	print_sheet(report, &by_itself, print_whole_plan);
}
