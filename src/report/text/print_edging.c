#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

static void print_runs(const struct report *report, const struct edging *edging)
{
	static const struct table_column columns[] = {
		{ "Runs", COLUMN_RIGHT }, { "Each", COLUMN_RIGHT }, { "Spikes each", COLUMN_RIGHT },
	};
	struct table table = table_start(columns, 3, 2);

	for (int i = 0; i < edging->row_count; i++) {
		const struct edging_row *row = &edging->rows[i];

		show_count(table_cell(&table), row->runs);
		show_length(table_cell(&table), row->length, report->units);
		show_count(table_cell(&table), row->spikes);
	}
	table_print(&table, report->out);
}

/* "In all 13 ft in 5 runs. 13 spikes: one at each end of a run, no two more than 24 in apart." */
static void print_sums(const struct report *report, const struct edging *edging)
{
	struct text line = TEXT_EMPTY;

	text_add(&line, "In all ");
	word_length(&line, report, edging->length);
	text_add(&line, " in ");
	word_count(&line, edging->runs, "run", "runs");
	text_add(&line, ". ");
	word_count(&line, edging->spikes, "spike", "spikes");
	text_add(&line, ": one at each end of a run, no two more than ");
	word_inches(&line, report, edging->spacing);
	text_add(&line, " apart.");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_clear(&line);
	word_count(&line, edging->bought, "piece", "pieces");
	text_add(&line, " of ");
	word_length(&line, report, edging->piece);
	text_add(&line, ": ");
	word_count(&line, edging->whole, "whole", "whole");
	text_add(&line, ", ");
	word_count(&line, edging->cut_up, "cut up", "cut up");
	text_add(&line, ". A run is laid of whole pieces and one cut to the rest.");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_cuts(const struct report *report, const struct edging *edging)
{
	static const struct table_column columns[] = {
		{ "Pieces", COLUMN_RIGHT }, { "Cut each into", COLUMN_WRAPS },
	};
	struct table table = table_start(columns, 2, 2);

	for (int i = 0; i < edging->cut_count; i++) {
		show_count(table_cell(&table), edging->cuts[i].blocks);
		word_cut(table_cell(&table), report, &edging->cuts[i], 0);
	}
	if (edging->cut_count > 0)
		text_add(report->out, "\n");
	table_print(&table, report->out);
}

void print_edging(const struct report *report)
{
	const struct edging *edging = &report->takeoff->edging;

	if (edging->runs == 0)
		return;
	page_heading(report->out, "Edging");
	page_paragraph(report->out, 0, 0, "Along paths and ground-level beds, each edge once. None where "
		"a raised bed's wall, a fixture or a held side of the plan holds the edge, and none "
		"between two paths. A run goes straight on as long as there is an edge on its line.");
	print_runs(report, edging);
	print_sums(report, edging);
	print_cuts(report, edging);
}
