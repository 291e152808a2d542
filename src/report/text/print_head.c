#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

/* "2 beds are not laid out, 1 has no cap". */
static void word_missing(struct text *text, const struct takeoff *takeoff)
{
	int64_t caps = caps_not_laid(takeoff);

	if (takeoff->not_laid_count > 0) {
		word_count(text, takeoff->not_laid_count, "bed is", "beds are");
		text_print(text, " not laid out%s", caps ? ", " : "");
	}
	if (caps > 0) {
		word_count(text, caps, "bed has", "beds have");
		text_add(text, " no cap laid out");
	}
}

static void plan_row(struct table *table, const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	struct text *cell;

	table_words(table, "Plan");
	cell = table_cell(table);
	show_length(cell, survey->columns * survey->cell, report->units);
	text_add(cell, " x ");
	show_length(cell, survey->rows * survey->cell, report->units);
	text_print(cell, ", %d x %d cells of ", survey->columns, survey->rows);
	show_length(cell, survey->cell, report->units);
}

static void state_rows(struct table *table, const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text *cell;

	if (!takeoff->complete) {
		table_words(table, "INCOMPLETE");
		cell = table_cell(table);
		word_missing(cell, takeoff);
		text_add(cell, ": what they need is in no total");
	}
	table_words(table, "Snags");
	cell = table_cell(table);
	if (takeoff->snag_count == 0)
		text_add(cell, "none found");
	else
		show_count(cell, takeoff->snag_count);
	if (takeoff->snag_count > 0)
		text_add(cell, ", listed at the end: read them before anything is bought");
}

void print_head(const struct report *report)
{
	static const struct table_column columns[] = { { NULL, COLUMN_LEFT }, { NULL, COLUMN_WRAPS } };
	const struct block *head = &report->plot->details.head;
	const struct value *title = block_value(head, HEAD_TITLE);
	struct table table = table_start(columns, 2, 0);

	text_add(report->out, "\n");
	if (title->set && *title->as.text)
		page_paragraph(report->out, 0, 0, title->as.text);
	table_words(&table, "Plot file");
	page_clean(table_cell(&table), report->file);
	plan_row(&table, report);
	state_rows(&table, report);
	for (size_t i = 0; i < head->notes.count; i++) {
		table_words(&table, "Note");
		table_words(&table, head->notes.texts[i]);
	}
	table_print(&table, report->out);
}

void print_start(const struct report *report)
{
	page_heading(report->out, "Before you start");
	page_paragraph(report->out, 0, 2, "Figures are for planning: measure on site before buying.");
	page_paragraph(report->out, 0, 2, "Before any digging have services marked and wait the days the "
		"local service asks. Marks cover public lines only and expire: private water, power, gas "
		"and drains need a private locator. Near marks dig by hand. Smell of gas: stop, leave, "
		"call.");
	page_paragraph(report->out, 0, 2, "Walls that hold ground, frost, water, and walls where children "
		"play are matters of local code: ask before building.");
}
