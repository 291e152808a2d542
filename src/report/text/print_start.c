#include "report/text/print.h"
#include "report/words/caution_words.h"

#include <ctype.h>

/* "Services" for "services". */
static const char *capital(const struct report *report, const char *word)
{
	return say(report, "%c%s", toupper((unsigned char)word[0]), word + 1);
}

void print_start(const struct report *report)
{
	static const struct table_column columns[] =
		{ { NULL, COLUMN_LEFT }, { NULL, COLUMN_WRAPS } };
	struct hand_table table = hand_table(columns, 2, 0);
	const char *word, *sentences;
	int at = 0;

	page_heading(report->out, "Before you start");
	print_lines(report, 0, 0, "Figures are for planning: measure on site before buying.");
	while ((word = caution_next(report, &at, &sentences)))
		TABLE_ROW(&table, capital(report, word), sentences);
	if (at > 0)
		print_blank(report);
	hand_table_print(&table, report->out);
}
