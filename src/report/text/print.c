#include "report/words/mark.h"
#include "report/text/print.h"

void report_text(struct text *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name)
{
	static void (*const sections[])(const struct report *) = {
		print_head, print_items, print_costs, print_start, print_areas, print_edges,
		print_dig, print_beds, print_stone, print_edging, print_walls, print_cutting,
		print_fill, print_lawn, print_fence, print_work, print_assumed, print_snags,
	};
	const struct report report = { out, plot, takeoff, plot_units(plot), name };

	text_print(out, "%s %d\n", MARK_TEXT, MARK_VERSION);
	for (size_t i = 0; i < sizeof sections / sizeof *sections; i++)
		sections[i](&report);
}
