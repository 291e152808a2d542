#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

static void area_row(struct table *table, const struct report *report, int64_t cells)
{
	show_count(table_cell(table), cells);
	show_area(table_cell(table), survey_area(cells, report->takeoff->survey.cell), report->units);
}

void print_areas(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "", COLUMN_LEFT }, { "Ground", COLUMN_LEFT }, { "Name", COLUMN_WRAPS },
		{ "Cells", COLUMN_RIGHT }, { "Area", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct table table = table_start(columns, 5, 0);

	page_heading(report->out, "Areas");
	for (int i = 0; i < takeoff->area_count; i++) {
		const struct area_row *area = &takeoff->areas[i];

		text_print(table_cell(&table), "%c", area->entry ? area->entry->letter : OPEN_GROUND);
		table_words(&table, class_word(area->entry ? area->entry->class : CLASS_OPEN));
		table_words(&table, area->entry ? area->entry->name : "Open ground, left as it is");
		area_row(&table, report, area->cells);
	}
	table_words(&table, "");
	table_words(&table, "");
	table_words(&table, "The whole plan");
	area_row(&table, report, (int64_t)takeoff->survey.columns * takeoff->survey.rows);
	table_print(&table, report->out);
}

void print_edges(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Between", COLUMN_LEFT }, { "Length", COLUMN_RIGHT },
	};
	const struct survey *survey = &report->takeoff->survey;
	struct table table = table_start(columns, 2, 0);

	page_heading(report->out, "Edges");
	for (int a = 0; a < CLASSES; a++) {
		for (int b = a; b < CLASSES; b++) {
			if (survey->edges[a][b] == 0)
				continue;
			text_print(table_cell(&table), "%s and %s", class_word((enum plot_class)a),
				class_word((enum plot_class)b));
			show_length(table_cell(&table), survey->edges[a][b] * survey->cell, report->units);
		}
	}
	table_print(&table, report->out);
	page_note(report->out, "Each edge once. Two letters of one kind side by side count as "
		"bed and bed; the boundary is the edge of the plan.");
}
