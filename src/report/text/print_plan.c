#include "report/text/print.h"
#include "base/stop.h"
#include "report/drawing/drawing.h"
#include "report/drawing/scale.h"
#include "report/text/ruler.h"

#include <string.h>

enum { APART_ACROSS = 8, APART_DOWN = 4 }; /* characters from one label to the next, at least */

/* ---- Sheets ---------------------------------------------------------------------------------- */

static void add_join(struct text *joins, struct place sheet, const struct cuts *cuts, int dx,
	int dy, const char *where)
{
	struct place beside = { sheet.x + dx, sheet.y + dy };
	char name[SHEET_NAME_MOST];

	if (beside.x < 0 || beside.x >= cuts->sheets_across || beside.y < 0 ||
	    beside.y >= cuts->sheets_down)
		return;
	cuts_name(beside, name);
	text_print(joins, "%s%s%c%s", joins->length ? ", " : "", name, PAGE_TIE, where);
}

/* "Sheet A2: 20 ft to 40 ft across, 0 in to 18 ft down. It joins A1 at the left, B2 below." */
static void print_sheet_head(const struct report *report, const struct cuts *cuts,
	struct place sheet)
{
	struct rectangle cells = cuts_cells(cuts, sheet);
	struct text joins = TEXT_EMPTY;
	char name[SHEET_NAME_MOST];

	cuts_name(sheet, name);
	add_join(&joins, sheet, cuts, -1, 0, "at\tthe\tleft");
	add_join(&joins, sheet, cuts, 1, 0, "at\tthe\tright");
	add_join(&joins, sheet, cuts, 0, -1, "above");
	add_join(&joins, sheet, cuts, 0, 1, "below");
	print_lines(report, 0, 0, "Sheet %s: %s to %s across, %s to %s down. It joins %s.", name,
		plain_sides(report, cells.left), plain_sides(report, cells.right + 1),
		plain_sides(report, cells.top), plain_sides(report, cells.bottom + 1),
		say_text(report, &joins));
}

static void print_sheet(const struct report *report, const struct drawing *drawing,
	struct place sheet)
{
	const struct cuts *cuts = &drawing->points.cuts;
	const struct ruler across = ruler_of(report, cuts->columns, cuts->across,
		APART_ACROSS);
	const struct ruler down = ruler_of(report, cuts->rows, cuts->down, APART_DOWN);
	struct rectangle on = drawing_sheet(drawing, sheet);
	int indent = ruler_columns(report);
	struct text line = TEXT_EMPTY;

	ruler_across(report, &across, indent, on.left, on.right);
	for (int row = on.top; row <= on.bottom; row++) {
		text_clear(&line);
		ruler_label(&line, &down, indent, row);
		drawing_row(drawing, row, on.left, on.right, &line);
		print_trimmed(report, &line);
	}
	text_fini(&line);
}

static bool is_cut(const struct cuts *cuts)
{
	return cuts->sheets_across * cuts->sheets_down > 1;
}

static void print_sheets(const struct report *report, const struct drawing *drawing)
{
	const struct cuts *cuts = &drawing->points.cuts;

	for (int y = 0; y < cuts->sheets_down; y++)
		for (int x = 0; x < cuts->sheets_across && !stop_asked(); x++) {
			if (is_cut(cuts) && x + y > 0)
				print_blank(report);
			if (is_cut(cuts))
				print_sheet_head(report, cuts, (struct place){ x, y });
			print_sheet(report, drawing, (struct place){ x, y });
		}
}

/* ---- What it means --------------------------------------------------------------------------- */

/* "A character is 3 in across and 6 in down. North is up." */
static const char *scale_sentences(const struct report *report, const struct cuts *cuts)
{
	nm cell = plot_cell(report->plot);
	const char *north = north_words(report);

	return say(report, "A character is %s across and %s down.%s%s",
		word_length(report, cell / cuts->across), word_length(report, cell / cuts->down),
		*north ? " " : "", north);
}

/* " Letters: b bed, Raised bed; l lawn, Turf." */
static const char *letters_words(const struct report *report)
{
	const struct areas *areas = &report->takeoff->areas;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < areas->count; i++)
		if (areas->list[i].entry && areas->list[i].cells > 0)
			text_print(&words, "%s%c%c%s, %s", words.length ? "; " : " Letters: ",
				areas->list[i].letter, PAGE_TIE, areas->list[i].class,
				areas->list[i].name);
	text_add(&words, words.length ? "." : "");
	return say_text(report, &words);
}

static bool has_sheets(const struct walls *walls)
{
	for (int i = 0; i < walls->count; i++)
		if (walls->list[i].turn == TURN_NONE)
			return true;
	return false;
}

/* " Fence 2 is Boards: 2.7 is its post 7, G2.1 its gate 1." */
static const char *fences_words(const struct report *report)
{
	const struct fences *fences = &report->takeoff->fences;
	struct text words = TEXT_EMPTY;

	for (int i = 1; i < fences->count; i++)
		text_print(&words, "%s%d%cis%c%s", i > 1 ? ", " : " Of several fences the second "
			"is told by 2., as in 2.7 and G2.1, and so on: ", i + 1, PAGE_TIE, PAGE_TIE,
			fences->list[i].name);
	text_add(&words, fences->count > 1 ? "." : "");
	return say_text(report, &words);
}

/* What is there, what is laid, what is dug by hand. */
static const char *services_words(const struct report *report)
{
	const struct service_lines *lines = &report->takeoff->services;

	return say(report, "%s%s%s%s%s", lines->existing > 0 ? " A line in the ground is * where "
		"it is there already." : "", lines->to_lay > 0 ? " A line to lay is ~." : "",
		lines->existing + lines->kept_count > 0 ? " Ground with / is dug by hand (--only "
		"services)." : "", report->plot->details.around.has_tap ? " Tap: @." : "",
		report->takeoff->watering.legs.count > 0 ? " The header from it is %." : "");
}

static void print_signs(const struct report *report, const struct cuts *cuts)
{
	print_note(report, "%s%s Lines of - | + go round beds and fixtures, dots along other "
		"edges.%s%s%s%s", scale_sentences(report, cuts), letters_words(report),
		has_sheets(&report->takeoff->walls) ? " A number in a bed's line is a side's, "
		"as on its laying sheet." : "",
		report->takeoff->fences.count > 0 ? " Fence: = and #; post: o and its number; "
		"gate: a gap and G." : "",
		fences_words(report), services_words(report));
}

/* The same of a plan with numbers of points. */
static void print_point_signs(const struct report *report, const struct drawing *drawing)
{
	print_note(report, "A number at a corner is that of its point%s.%s%s",
		report->takeoff->fences.count > 0 ? ", beside an o that of a post, after a G that "
		"of a gate" : "", fences_words(report),
		drawing->unnumbered > 0 ? say(report, " %s no room for it.",
		word_count(report, drawing->unnumbered, "point has", "points have")) : "");
}

/* ---- What had no room ------------------------------------------------------------------------ */

/* A list of which so many are named, and the others counted. */
struct left_out {
	struct text words;
	int64_t count;
};

static bool is_named(struct left_out *list)
{
	if (list->count++ >= NAMED_MOST)
		return false;
	text_add(&list->words, list->words.length ? "; " : "");
	return true;
}

static void add_region(struct left_out *list, const struct report *report, int region,
	enum named named)
{
	const struct survey *survey = &report->takeoff->survey;
	const char *own = survey_own_name(survey, region);

	if (named == NAMED_ALL || (named == NAMED_ID && !own) || !is_named(list))
		return;
	text_add(&list->words, plain_named_region(report, region));
	if (named == NAMED_NOT)
		text_print(&list->words, " at %s", tied(report, plain_place(report,
			survey->regions[region].first_cell)));
}

static void print_left_out(const struct report *report, const struct drawing *drawing)
{
	struct left_out list = { TEXT_EMPTY, 0 };

	for (int i = 0; i < report->takeoff->survey.region_count && !stop_asked(); i++) {
		add_region(&list, report, i, (enum named)drawing->ids.named[i]);
		arena_clear(report->words);
	}
	for (size_t i = 0; i < drawing->fences.nameless_count; i++) {
		const struct nameless_gate *gate = &drawing->fences.nameless[i];
		char name[FENCE_NAME_MOST];

		fence_gate_name(gate->fence, gate->gate, name);
		if (is_named(&list))
			text_print(&list.words, "%s at %s", name, tied(report, plain_place(report,
				report->takeoff->fences.list[gate->fence].gates[gate->gate]
				.on.from)));
	}
	if (list.count > NAMED_MOST)
		text_print(&list.words, "; and %s more",
			plain_count(report, list.count - NAMED_MOST));
	if (list.count > 0)
		print_note(report, "No room on the plan: %s.", say_text(report, &list.words));
	text_fini(&list.words);
}

/* ---- The whole ------------------------------------------------------------------------------- */

/* Beside a set-out, that is to be a page with it, a plan is drawn large only where it is low. */
enum { SETOUT_ROWS = 16 };

static struct cuts cuts_for(const struct report *report, const struct setout *setout)
{
	const struct survey *survey = &report->takeoff->survey;

	return cuts_within(survey->columns, survey->rows, ruler_columns(report),
		setout ? SETOUT_ROWS : SHEET_ROWS);
}

void print_drawing(const struct report *report, const struct setout *setout)
{
	struct cuts cuts = cuts_for(report, setout);
	struct arena arena = ARENA_EMPTY;
	struct drawing drawing;

	drawing_make(&drawing, &arena, report->takeoff, &cuts, setout);
	print_sheets(report, &drawing);
	if (setout)
		print_point_signs(report, &drawing);
	else
		print_signs(report, &cuts);
	print_left_out(report, &drawing);
	arena_clear(&arena);
}

/* command: what prints the plan where it takes too many sheets here. */
static void print_some(const struct report *report, const struct setout *setout,
	const char *command)
{
	struct cuts cuts = cuts_for(report, setout);
	int sheets = cuts.sheets_across * cuts.sheets_down;

	print_blank(report);
	if (sheets > PLAN_SHEETS_MOST)
		print_lines(report, 0, 0, "The plan takes %s sheets: parterre %s FILE prints "
			"them.", plain_count(report, sheets), command);
	else
		print_drawing(report, setout);
}

void print_plan(const struct report *report)
{
	print_some(report, NULL, "plan");
}

void print_plan_numbered(const struct report *report, const struct setout *setout)
{
	print_some(report, setout, "setout");
}
