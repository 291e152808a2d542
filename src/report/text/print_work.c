#include "report/text/print.h"
#include "report/words/caution_words.h"
#include "report/words/labour_words.h"
#include "report/words/work_words.h"

/* Liner by the roll that it is cut from. */
static const char *taken_words(const struct report *report, const struct item *item)
{
	return item->note.kind == NOTE_LINER ?
		word_count(report, item->note.count, "roll", "rolls") :
		item_amount(report, item, item->order);
}

static bool is_all_loose(const struct report *report, const struct planned_step *step)
{
	for (int i = 0; i < step->item_count; i++)
		if (item_unit(&report->takeoff->items.list[step->items[i]]) != UNIT_M3)
			return false;
	return true;
}

/* "Base stone 2.31 cu yd; 9 barrow loads."; "Gravel under posts 2.4 cu ft, Fence post 6 ft x
 * 3 1/2 in: 8; 1 barrow load of what is loose." */
static void print_takes(const struct report *report, const struct planned_step *step)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < step->item_count; i++) {
		const struct item *item = &report->takeoff->items.list[step->items[i]];
		const char *size = item_size(report, item);

		text_print(&words, "%s%s%c", i ? ", " : "", item_label(report, item), PAGE_TIE);
		if (*size)
			text_print(&words, "%s:%c", size, PAGE_TIE);
		text_add(&words, taken_words(report, item));
	}
	if (step->barrows > 0)
		text_print(&words, "; %s%s",
			word_count(report, step->barrows, "barrow load", "barrow loads"),
			is_all_loose(report, step) ? "" : " of what is loose");
	if (step->item_count > 0)
		print_lines(report, 3, 5, "Takes: %s.", words.bytes);
	text_fini(&words);
}

/* "dig 37.5 cu ft, dig 6 post holes: 3.4 hours for what has a rate." */
static void print_labour(const struct report *report, const struct planned_step *step)
{
	struct text words = TEXT_EMPTY;
	bool is_all_rated = true;

	for (int i = 0; i < step->labour_count; i++) {
		text_print(&words, "%s%s", i ? ", " : "", labour_words(report, &step->labour[i]));
		is_all_rated = is_all_rated && step->labour[i].source != RATE_UNKNOWN;
	}
	if (step->has_hours)
		text_print(&words, ": %s%s", word_hours(report, step->hours),
			is_all_rated ? "" : " for what has a rate");
	if (step->labour_count > 0)
		print_lines(report, 3, 5, "Work: %s.", words.bytes);
	text_fini(&words);
}

/* What goes back into the ground, or into the beds and lawns: as loose as it lies on its heap. */
static void print_set_aside(const struct report *report)
{
	const struct earthwork *earth = &report->takeoff->earthwork;
	struct text words = TEXT_EMPTY;

	if (earth->reused > 0)
		text_print(&words, "topsoil %s", word_volume(report, earth->reused));
	if (earth->backfill_loose > 0)
		text_print(&words, "%sfor the backfill %s", words.length ? "; " : "",
			word_volume(report, earth->backfill_loose));
	print_lines(report, 3, 5, "Keep: %s, loose.", words.bytes);
	text_fini(&words);
}

static void print_sod_kept(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	if (earthwork_sod_kept(&takeoff->earthwork, takeoff->allow) > 0)
		print_lines(report, 3, 5, "Keep: the sod of %s, to be laid back inside the walls.",
			word_area(report, takeoff->earthwork.loosened));
}

static void print_line(const struct report *report, const char *head, const char *words)
{
	if (*words)
		print_lines(report, 3, 5, "%s: %s", head, words);
}

static void print_step(const struct report *report, int number, const struct planned_step *step)
{
	print_lines(report, 0, 3, "%2d %s", number, step_title(report, step->step));
	print_lines(report, 3, 5, "%s", step_doing(report, step->step));
	if (step->step == WORK_STRIP)
		print_sod_kept(report);
	if (step->step == WORK_SET_ASIDE)
		print_set_aside(report);
	print_takes(report, step);
	print_labour(report, step);
	print_line(report, "Tools", step_tools(report, step->step));
	print_line(report, "Mind", caution_words(report, step));
}

/* ---- Hours ----------------------------------------------------------------------------------- */

static void print_rates(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Work", COLUMN_WRAPS }, { "Rate", COLUMN_RIGHT }, { "By", COLUMN_LEFT },
		{ "Hours", COLUMN_RIGHT },
	};
	const struct work *work = &report->takeoff->work;
	struct hand_table table = hand_table(columns, 4, 0);

	for (int i = 0; i < work->labours.count; i++) {
		const struct labour *labour = &work->labours.list[i];

		if (labour->source != RATE_UNKNOWN)
			TABLE_ROW(&table, labour_words(report, labour),
				labour_rate(report, labour), labour_source(labour),
				plain_decimal(report, labour->hours, 1));
	}
	hand_table_print(&table, report->out);
}

/* What no rate is known for, and a line that would give one. */
static void print_unrated(const struct report *report)
{
	const struct labours *labours = &report->takeoff->work.labours;
	struct text words = TEXT_EMPTY, line = TEXT_EMPTY;

	for (int i = 0; i < labours->count; i++) {
		const struct labour *labour = &labours->list[i];

		if (labour->source != RATE_UNKNOWN)
			continue;
		if (!line.length)
			text_add(&line, labour_line(report, labour->kind));
		text_print(&words, "%s%s", words.length ? ", " : "", labour_words(report, labour));
	}
	if (words.length)
		print_note(report, "No rate, so in no hours: %s. Give yours, one a line of the "
			"plot: %s.", words.bytes, line.bytes);
	text_fini(&words);
	text_fini(&line);
}

static bool has_usual(const struct work *work)
{
	for (int i = 0; i < work->labours.count; i++)
		if (work->labours.list[i].source == RATE_USUAL)
			return true;
	return false;
}

static void print_hours(const struct report *report)
{
	const struct work *work = &report->takeoff->work;
	const struct work_sum *sum = &work->sum;

	if (sum->hours > 0) {
		print_blank(report);
		print_rates(report);
		print_note(report,
			"In all %s of the work that has a rate: %s for %s at %s a day.%s",
			word_hours(report, sum->hours), word_days(report, sum->days),
			sum->crew == 1 ? "one person" : say(report, "a crew of %s",
				plain_count(report, sum->crew)), word_hours(report, sum->day),
			sum->unrated > 0 ? " All other work comes on top." : "");
	}
	print_unrated(report);
	if (has_usual(work))
		print_note(report, "* Common practice, no published source: a rule of thumb. Your "
			"own pace differs: time the first barrows.");
}

void print_work(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	if (takeoff->work.count == 0)
		return;
	print_heading(report, "Order of work", takeoff->complete);
	for (int i = 0; i < takeoff->work.count; i++)
		print_step(report, i + 1, &takeoff->work.list[i]);
	print_hours(report);
}
