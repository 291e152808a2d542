#include "report/text/print.h"
#include "report/words/caution_words.h"
#include "report/words/labour_words.h"
#include "report/words/work_words.h"

#include <string.h>

/* ---- The steps ------------------------------------------------------------------------------- */

/* What the item at a place of the step's is bought as; NULL where it is not. */
static const char *bought_label(const struct report *report, const struct planned_step *step,
	int at)
{
	const struct item_list *items = &report->takeoff->items;
	const struct item *item = &items->list[step->items[at]];

	return item_purchase(items, item) ? item_label(report, item) : NULL;
}

/* Blocks of another size have the same label. */
static bool is_named_before(const struct report *report, const struct planned_step *step, int at,
	const char *label)
{
	for (int i = 0; i < at; i++) {
		const char *before = bought_label(report, step, i);

		if (before && strcmp(before, label) == 0)
			return true;
	}
	return false;
}

/* "Fence post; Gravel under posts": what it takes; not what is hauled away. */
static const char *needed_words(const struct report *report, const struct planned_step *step)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < step->item_count && step->step != WORK_HAUL; i++) {
		const char *label = bought_label(report, step, i);

		if (label && !is_named_before(report, step, i, label))
			text_print(&words, "%s%s", words.length ? "; " : "", label);
	}
	return words.length ? say_text(report, &words) : "-";
}

/* "2.2 +": so many hours, and work that has no rate. */
static const char *hours_cell(const struct report *report, const struct planned_step *step)
{
	bool is_all_rated = true;

	for (int i = 0; i < step->labour_count; i++)
		is_all_rated = is_all_rated && step->labour[i].source != RATE_UNKNOWN;
	if (!step->has_hours)
		return is_all_rated ? "-" : "+";
	return say(report, "%s%s", plain_decimal(report, step->hours, 1), is_all_rated ? "" : " +");
}

static const char *people_cell(const struct report *report, const struct planned_step *step)
{
	int64_t crew = report->takeoff->work.sum.crew;

	return plain_count(report, crew < 2 && caution_takes_two(report, step) ? 2 : crew);
}

/* "Dig 37.5 cu ft, dig 6 post holes; 9 barrow loads, 18 ft each way. " */
static const char *labour_sentence(const struct report *report, const struct planned_step *step)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < step->labour_count; i++)
		text_print(&words, "%s%s", i ? ", " : "", labour_words(report, &step->labour[i]));
	if (step->barrow.loads > 0)
		text_print(&words, "%s%s", words.length ? "; " : "",
			word_count(report, step->barrow.loads, "barrow load", "barrow loads"));
	if (step->barrow.way > 0)
		text_print(&words, ", %s each way", word_way(report, step->barrow.way));
	text_add(&words, words.length ? ". " : "");
	return capital(report, say_text(report, &words));
}

/* What is kept: the sod of undug ground in the beds; soil that goes back into the ground, or into
 * the beds and lawns, as loose as it lies on its heap. */
static void add_kept(struct text *words, const struct report *report, enum work_step step)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct earthwork *earth = &takeoff->earthwork;

	if (step == WORK_STRIP && earthwork_sod_kept(earth, takeoff->allow) > 0)
		text_print(words, "Keep the sod of %s, to be laid back inside the walls. ",
			word_area(report, earth->loosened));
	if (step == WORK_SET_ASIDE && earth->reused > 0)
		text_print(words, "Topsoil: %s, loose. ", word_volume(report, earth->reused));
	if (step == WORK_SET_ASIDE && earth->backfill_loose > 0)
		text_print(words, "For the backfill: %s, loose. ",
			word_volume(report, earth->backfill_loose));
}

static const char *doing_words(const struct report *report, const struct planned_step *step)
{
	const char *mind = caution_words(report, 1u << step->step);
	struct text words = TEXT_EMPTY;

	text_add(&words, labour_sentence(report, step));
	if (!report->is_whole)
		text_print(&words, "%s ", step_doing(report, step->step));
	add_kept(&words, report, step->step);
	if (*mind)
		text_print(&words, "Mind: %s.", mind);
	return say_text(report, &words);
}

static void print_steps(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "", COLUMN_RIGHT }, { "Step", COLUMN_LEFT }, { "Crew", COLUMN_RIGHT },
		{ "Hours", COLUMN_RIGHT }, { "Must be there", COLUMN_WRAPS },
	};
	const struct work *work = &report->takeoff->work;
	struct hand_table table = hand_table(columns, 5, 0);

	table.table.across = 4;
	for (int i = 0; i < work->count; i++) {
		const struct planned_step *step = &work->list[i];

		TABLE_ROW(&table, plain_count(report, i + 1), step_title(report, step->step),
			people_cell(report, step), hours_cell(report, step),
			needed_words(report, step));
		hand_table_across(&table, doing_words(report, step));
		arena_clear(report->words);
	}
	hand_table_print(&table, report->out);
}

/* ---- Hours ----------------------------------------------------------------------------------- */

static bool has_usual(const struct work *work)
{
	for (int i = 0; i < work->labours.count; i++)
		if (work->labours.list[i].source == RATE_USUAL)
			return true;
	return false;
}

/* The line that would give the first rate that is not known; NULL: all are. */
static const char *missing_line(const struct report *report)
{
	const struct labours *labours = &report->takeoff->work.labours;

	for (int i = 0; i < labours->count; i++)
		if (labours->list[i].source == RATE_UNKNOWN)
			return labour_line(report, labours->list[i].kind);
	return NULL;
}

/* Several steps may have work of one kind. */
static bool is_before(const struct labours *labours, int at)
{
	for (int i = 0; i < at; i++)
		if (labours->list[i].kind == labours->list[at].kind)
			return true;
	return false;
}

/* "strip 0.0104 h per sq ft; dig 0.2 h per cu ft (the plot)" */
static const char *rates_words(const struct report *report)
{
	const struct labours *labours = &report->takeoff->work.labours;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < labours->count; i++) {
		const struct labour *labour = &labours->list[i];

		if (labour->source != RATE_UNKNOWN && !is_before(labours, i))
			text_print(&words, "%s%s %s%s", words.length ? "; " : "",
				attribute_row(labour->kind)->keyword,
				tied(report, labour_rate(report, labour)),
				labour->source == RATE_USUAL ? "" :
				say(report, " (%s)", labour_source(labour)));
	}
	return say_text(report, &words);
}

static void print_hours(const struct report *report)
{
	const struct work *work = &report->takeoff->work;
	const char *line = missing_line(report);

	print_note(report, "What to mind, in full: --only front. Hours are those of one "
		"person.%s%s%s",
		work->sum.hours <= 0 ? "" : say(report, " Rates: %s.", rates_words(report)),
		!has_usual(work) ? "" : " Those not the plot's or the book's are common practice, "
		"no published source: a rule of thumb.",
		!line ? "" : say(report, " +: work with no rate; give yours, one a line of the "
		"plot: %s.", tied(report, line)));
}

/* ---- Ways of a barrow ------------------------------------------------------------------------ */

/* "B1 14 ft, P1 11 ft and 3 more, Pickets 10 ft" */
static const char *ways_words(const struct report *report)
{
	const struct barrow_ways *ways = &report->takeoff->barrow_ways;
	int more = ways->count - NAMED_MOST;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < ways->count && i < NAMED_MOST; i++)
		text_print(&words, "%s%s%c%s", i ? ", " : "",
			plain_region(report, ways->list[i].region), PAGE_TIE,
			word_way(report, ways->list[i].length));
	if (more > 0)
		text_print(&words, " and%c%s%cmore", PAGE_TIE, plain_count(report, more), PAGE_TIE);
	for (int i = 0; i < ways->fence_count && i < NAMED_MOST; i++)
		text_print(&words, "%s%s%c%s", words.length ? ", " : "", ways->fence_list[i].name,
			PAGE_TIE, word_way(report, ways->fence_list[i].length));
	return say_text(report, &words);
}

static void print_ways(const struct report *report)
{
	const struct barrow_ways *ways = &report->takeoff->barrow_ways;

	if (ways->count + ways->fence_count == 0)
		return;
	print_note(report, "A barrow goes from the drop, at %s, to %s.", tied(report,
		plain_corner(report, report->plot->details.around.drop)), ways_words(report));
	print_explained(report, "That is along rows and columns of cells, over paths, lawns and "
		"open ground and through gates: to a path or a lawn on the average of its cells, "
		"to a bed of the sides where it can stand. Hours count the way there and back; "
		"of what is spread only what lies beyond the %s that its rate has in it.",
		report->units == UNITS_METRIC ? "50\tm" : "164\tft");
}

void print_programme(const struct report *report)
{
	if (report->takeoff->work.count == 0)
		return;
	print_steps(report);
	print_ways(report);
	if (report->is_whole) {
		print_lines(report, 0, 0, "Hours of one person; +: more that has no rate. How it "
			"is done: --only programme.");
		return;
	}
	print_hours(report);
	print_lines(report, 0, 0, "Tools: %s.", work_tools(report));
}
