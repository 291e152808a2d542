#include "report/text/print.h"
#include "base/spell.h"
#include "report/words/caution_words.h"
#include "report/words/labour_words.h"
#include "report/words/notice_words.h"
#include "report/words/work_words.h"

/* The columns of a list: what, and its words. */
static struct hand_table list_table(void)
{
	static const struct table_column columns[] =
		{ { NULL, COLUMN_LEFT }, { NULL, COLUMN_WRAPS } };

	return hand_table(columns, 2, 0);
}

/* ---- Head ------------------------------------------------------------------------------------ */

static const char *title_of(const struct report *report)
{
	const struct value *title = block_value(&report->plot->details.head, HEAD_TITLE);

	return title->set ? title->as.text : "";
}

static const char *file_of(const struct report *report)
{
	struct text file = TEXT_EMPTY;

	spell(&file, report->file);
	return say_text(report, &file);
}

const char *plot_named(const struct report *report)
{
	const char *title = title_of(report);

	return say(report, "%s%s%s", title, *title ? ", " : "", file_of(report));
}

/* "2 beds are not laid out, 1 has no cap". */
static const char *missing_words(const struct report *report)
{
	const struct walls *walls = &report->takeoff->walls;
	const char *beds = walls->not_laid_count == 0 ? "" : say(report, "%s not laid out%s",
		word_count(report, walls->not_laid_count, "bed is", "beds are"),
		walls->caps_not_laid ? ", " : "");

	return walls->caps_not_laid == 0 ? beds : say(report, "%s%s no cap laid out", beds,
		word_count(report, walls->caps_not_laid, "bed has", "beds have"));
}

/* The title, and the row that every head has. */
static void begin_head(const struct report *report, struct hand_table *table)
{
	const struct survey *survey = &report->takeoff->survey;

	print_blank(report);
	print_lines(report, 0, 0, "%s", title_of(report));
	TABLE_ROW(table, "Plan", say(report, "%s: %s, %d x %d cells of %s", file_of(report),
		plain_cells(report, survey->columns, survey->rows), survey->columns, survey->rows,
		plain_length(report, survey->cell)));
}

void print_plan_head(const struct report *report)
{
	struct hand_table table = list_table();

	begin_head(report, &table);
	hand_table_print(&table, report->out);
}

static void print_head(const struct report *report)
{
	const struct block *head = &report->plot->details.head;
	struct hand_table table = list_table();
	struct text line = TEXT_EMPTY;

	begin_head(report, &table);
	text_add_repeat(&line, '_', 43);
	text_add(&line, "  Date ");
	text_add_repeat(&line, '_', 17);
	TABLE_ROW(&table, "Address", line.bytes);
	text_fini(&line);
	if (*notice_words(report))
		TABLE_ROW(&table, "Notice", notice_words(report));
	if (!report->takeoff->complete)
		TABLE_ROW(&table, "INCOMPLETE", say(report, "%s: what they need is in no total",
			missing_words(report)));
	for (size_t i = 0; i < head->notes.count; i++)
		TABLE_ROW(&table, "Note", head->notes.texts[i]);
	hand_table_print(&table, report->out);
}

/* ---- Totals ---------------------------------------------------------------------------------- */

static const char *cost_words(const struct report *report)
{
	const struct costs *costs = &report->takeoff->costs;

	return say(report, "%s %s: goods %s, delivery %s, tax neither added nor taken off%s",
		costs->currency, plain_money(report, costs->total),
		plain_money(report, costs->goods), plain_money(report, costs->delivery),
		costs->unpriced == 0 ? "" : say(report, "; %s no price in the book and %s in no "
		"sum", word_count(report, costs->unpriced, "item has", "items have"),
		costs->unpriced == 1 ? "is" : "are"));
}

/* What comes, and what is taken away. */
static const char *weight_words(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	double away = takeoff->earthwork.spoil_weight, brought = takeoff->costs.brought;
	const char *more = takeoff->costs.is_weighed ? "" :
		"; more is not weighed";

	if (away <= 0 || brought <= 0)
		return say(report, "%s%s", plain_weight(report, takeoff->costs.weight), more);
	return say(report, "%s to bring, %s to take away%s", plain_weight(report, brought),
		plain_weight(report, away), more);
}

/* "12 trips of a pickup that carries 1,500 lb". */
static const char *trips_of_vehicle(const struct report *report, int64_t trips)
{
	const char *vehicle = report->takeoff->book->vehicle.name;

	return say(report, "%s of %s that carries %s", word_count(report, trips, "trip", "trips"),
		vehicle ? vehicle : "a pickup",
		plain_weight(report, report->takeoff->costs.vehicle_carries));
}

/* With a book who carries what is known: drops, spoil that is fetched, and trips of one's own. */
static const char *trips_by_book(const struct report *report)
{
	const struct costs *costs = &report->takeoff->costs;
	int64_t drops = 0, fetched = 0, trips = 0;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < costs->shipment_count; i++) {
		const struct shipment *shipment = &costs->shipments[i];

		if (shipment->supplier == NO_SUPPLIER)
			trips += shipment->drops;
		else if (shipment->day == DAY_DIG)
			fetched += shipment->drops;
		else
			drops += shipment->drops;
	}
	if (drops > 0)
		text_add(&words, word_count(report, drops, "drop brought", "drops brought"));
	if (fetched > 0)
		text_print(&words, "%s%s", words.length ? "; " : "",
			word_count(report, fetched, "load hauled away", "loads hauled away"));
	if (trips > 0)
		text_print(&words, "%s%s", words.length ? "; " : "",
			trips_of_vehicle(report, trips));
	if (!costs->is_weighed)
		text_add(&words, "; more where a weight is not known");
	return say_text(report, &words);
}

static const char *trips_words(const struct report *report)
{
	const struct costs *costs = &report->takeoff->costs;
	int64_t pickups = 0, trucks = 0;

	if (report->takeoff->book)
		return trips_by_book(report);
	for (int i = 0; i < costs->day_count; i++) {
		pickups += costs->days[i].pickups;
		trucks += costs->days[i].trucks;
	}
	return say(report, "%s or %s%s, each day's goods by themselves",
		word_count(report, pickups, "pickup load", "pickup loads"),
		word_count(report, trucks, "truck load", "truck loads"),
		costs->is_weighed ? "" : " or more");
}

static const char *hours_words(const struct report *report)
{
	const struct work_sum *sum = &report->takeoff->work.sum;

	if (sum->hours <= 0)
		return "no work that has a rate";
	return say(report, "%s at known rates%s: %s of %s, %s", word_hours(report, sum->hours),
		sum->unrated > 0 ? ", more on top" : "", word_days(report, sum->days),
		word_hours(report, sum->day), sum->crew == 1 ? "one person" :
		say(report, "a crew of %s", plain_count(report, sum->crew)));
}

static void print_totals(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct hand_table table = list_table();

	print_blank(report);
	if (takeoff->book)
		TABLE_ROW(&table, "Cost", cost_words(report));
	if (takeoff->costs.weight > 0) {
		TABLE_ROW(&table, "Weight", weight_words(report));
		TABLE_ROW(&table, "Loads", trips_words(report));
	}
	if (takeoff->work.count > 0)
		TABLE_ROW(&table, "Work", hours_words(report));
	hand_table_print(&table, report->out);
	print_lines(report, 0, 0, "Not counted unless an extra: %s.",
		uncounted_words(report));
}

/* ---- Cautions -------------------------------------------------------------------------------- */

void print_cautions(const struct report *report)
{
	const char *word, *sentences;
	int at = 0;

	print_note(report, "Before you start: figures are for planning, so measure on site before "
		"buying.");
	while ((word = caution_next(report, &at, &sentences)))
		print_lines(report, 0, 2, "%s: %s", capital(report, word), sentences);
}

void print_front(const struct report *report)
{
	print_head(report);
	print_plan(report);
	print_snags(report);
	print_totals(report);
	print_cautions(report);
}
