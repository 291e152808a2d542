#include "report/text/print.h"

/* "1 of 9 ft 6 in, 2 of 7 ft 6 in". */
static const char *pieces_words(const struct report *report, const struct fabric *fabric)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < fabric->row_count; i++)
		text_print(&words, "%s%s%cof%c%s", i ? ", " : "",
			plain_count(report, fabric->rows[i].pieces), PAGE_TIE, PAGE_TIE,
			word_length(report, fabric->rows[i].length));
	return say_text(report, &words);
}

/* "Fabric 6 ft wide in rolls of 100 ft, under 48 sq ft ...: strips from left to right, ...." */
void print_fabric(const struct report *report)
{
	const struct fabric *fabric = &report->takeoff->fabric;
	const char *joins = "";

	if (fabric->rolls == 0)
		return;
	print_blank(report);
	print_lines(report, 0, 2, "Fabric %s wide in rolls of %s, under %s of path and base: %s, "
		"each next one %s over the one before.%s",
		word_length(report, fabric->width), word_length(report, fabric->roll),
		word_area(report, fabric->area), word_heading(&fabric_way_words[fabric->way]),
		word_inches(report, fabric->lap), report->is_whole ? "" : say(report,
		" A gap under %s is run through. Cut away what lies over ground that is not dug.",
		word_inches(report, block_length(report->takeoff->allow, ALLOW_FABRIC_OFFCUT))));
	if (fabric->joins > 0)
		joins = say(report, "Where a roll ends within a piece the next goes on, %s over "
			"it: %s. ",
			word_inches(report, fabric->end_lap),
			word_count(report, fabric->joins, "time", "times"));
	print_lines(report, 2, 2, "Pieces: %s. %s, of which %s %s used. %s%s: along edges, side "
		"laps, ends and end laps, at the corners and no farther than %s apart.",
		pieces_words(report, fabric),
		word_count(report, fabric->rolls, "roll", "rolls"),
		word_length(report, fabric->used), fabric->rolls == 1 ? "is" : "are", joins,
		word_count(report, fabric->pins, "pin", "pins"), word_inches(report,
			block_length(report->takeoff->allow, ALLOW_FABRIC_PINS)));
}
