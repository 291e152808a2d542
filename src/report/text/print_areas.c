#include "report/text/print.h"
#include "base/memory.h"

#include <stdlib.h>
#include <string.h>

void print_areas(const struct report *report)
{
	const struct areas *areas = &report->takeoff->areas;
	const struct survey *survey = &report->takeoff->survey;
	int64_t cells = (int64_t)survey->columns * survey->rows;
	struct area_row *rows = memory_new((size_t)areas->count + 1, sizeof *rows);

	memcpy(rows, areas->list, (size_t)areas->count * sizeof *rows);
	rows[areas->count] = (struct area_row){ .letter = ' ', .class = "",
		.remark = "The whole plan", .cells = cells,
		.area = survey_area(cells, survey->cell) };
	print_rows(report, &area_table, rows, areas->count + 1, 0, NULL);
	free(rows);
}

void print_names(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Region", COLUMN_LEFT }, { "Letter", COLUMN_LEFT }, { "Name", COLUMN_WRAPS },
	};
	const struct survey *survey = &report->takeoff->survey;
	struct hand_table table = hand_table(columns, 3, 0);

	if (survey->name_count == 0)
		return;
	page_heading(report->out, "Names");
	for (int i = 0; i < survey->name_count; i++) {
		const struct region_name *name = &survey->names[i];

		TABLE_ROW(&table, plain_region(report, name->region), say(report, "%c",
			survey->regions[name->region].entry->letter), name->text);
	}
	hand_table_print(&table, report->out);
}

void print_edges(const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	struct text words = TEXT_EMPTY;
	int same = 0; /* the first class with an edge to another letter of its own */

	while (same < CLASSES && survey->edges[same][same] == 0)
		same++;
	for (int a = 0; a < CLASSES; a++)
		for (int b = a; b < CLASSES; b++)
			if (survey->edges[a][b] > 0)
				text_print(&words, "%s%s and %s %s", words.length ? "; " : "",
					class_word((enum plot_class)a),
					class_word((enum plot_class)b),
					tied(report, plain_sides(report, survey->edges[a][b])));
	print_note(report, "Edges (boundary: the plan's): %s.%s",
		words.bytes,
		same < CLASSES ? say(report, " Two letters of one kind side by side count as %s "
			"and %s.", class_word((enum plot_class)same),
			class_word((enum plot_class)same)) : "");
	text_fini(&words);
}
