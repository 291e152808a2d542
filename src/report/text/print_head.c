#include "report/text/print.h"
#include "base/spell.h"

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

static const char *plan_words(const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;

	return say(report, "%s, %d x %d cells of %s",
		plain_cells(report, survey->columns, survey->rows), survey->columns, survey->rows,
		plain_length(report, survey->cell));
}

static const char *snags_words(const struct report *report)
{
	size_t count = report->takeoff->snags.count;

	return count == 0 ? "none found" : say(report,
		"%s, listed at the end: read them before anything is bought",
		plain_count(report, (int64_t)count));
}

/* The columns of a head: what, and its words. */
static struct hand_table head_table(void)
{
	static const struct table_column columns[] =
		{ { NULL, COLUMN_LEFT }, { NULL, COLUMN_WRAPS } };

	return hand_table(columns, 2, 0);
}

/* The title, and the rows that every head has. */
static void begin_head(const struct report *report, struct hand_table *table)
{
	const struct value *title = block_value(&report->plot->details.head, HEAD_TITLE);
	struct text file = TEXT_EMPTY;

	print_blank(report);
	if (title->set && *title->as.text)
		print_lines(report, 0, 0, "%s", title->as.text);
	spell(&file, report->file);
	TABLE_ROW(table, "Plot file", say_text(report, &file));
	TABLE_ROW(table, "Plan", plan_words(report));
}

void print_head(const struct report *report)
{
	const struct block *head = &report->plot->details.head;
	struct hand_table table = head_table();

	begin_head(report, &table);
	if (!report->takeoff->complete)
		TABLE_ROW(&table, "INCOMPLETE", say(report, "%s: what they need is in no total",
			missing_words(report)));
	TABLE_ROW(&table, "Snags", snags_words(report));
	for (size_t i = 0; i < head->notes.count; i++)
		TABLE_ROW(&table, "Note", head->notes.texts[i]);
	hand_table_print(&table, report->out);
}

void print_plan_head(const struct report *report)
{
	struct hand_table table = head_table();

	begin_head(report, &table);
	hand_table_print(&table, report->out);
}
