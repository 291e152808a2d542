#include "report/panel/page_services.h"

/* Where a line begins; x -1 where it is nowhere yet. */
static struct place line_place(const struct service_line *line)
{
	const struct routes *routes = &line->service->routes;

	return routes->count > 0 ? routes->items[0].points[0] : (struct place){ -1, -1 };
}

/* The cell of the plan that is nearest to its upper left corner, or to its middle. */
static struct place kept_place(const struct kept *kept, const struct takeoff *takeoff)
{
	const struct obstacle *obstacle = kept->obstacle;

	return ground_nearest(&takeoff->plot.ground, obstacle->radius > 0 ? obstacle->at :
		(struct place){ obstacle->cells.left, obstacle->cells.top });
}

void page_services(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct service_lines *lines = &takeoff->services;

	for (int i = 0; page_goes_on(maker, i, lines->count); i++)
		page_row_at(maker, &service_line_table, &lines->list[i],
			line_place(&lines->list[i]));
	for (int i = 0; page_goes_on(maker, i, lines->kept_count); i++)
		page_row_at(maker, &kept_table, &lines->kept[i], kept_place(&lines->kept[i],
			takeoff));
	if (lines->existing + lines->kept_count > 0)
		page_note_line(maker, "What is dug by hand: takeoff --only services.");
	page_if_empty(maker, "No line in the ground is told, and nothing kept.");
}
