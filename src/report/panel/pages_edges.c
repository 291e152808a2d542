#include "report/panel/pages.h"

void pages_edges(struct page_maker *maker)
{
	const struct survey *survey = &maker->takeoff->survey;

	for (int a = 0; a < CLASSES; a++)
		for (int b = a; b < CLASSES; b++)
			if (survey->edges[a][b])
				pages_length(maker, arena_print(maker->arena, "%s, %s",
					class_word((enum plot_class)a), class_word((enum plot_class)b)),
					survey->edges[a][b] * survey->cell);
	if (maker->page->count == 0)
		pages_note(maker, "No edges yet.");
}
