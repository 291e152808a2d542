#include "report/text/print.h"
#include "report/words/advice_words.h"

void print_advice(const struct report *report)
{
	struct advice advice;
	const char *rest;

	if (!advice_has_subject(report->takeoff))
		return;
	advice_make(&advice, report->plot, report->takeoff);
	rest = advice_rest(&advice);
	if (report->is_whole && advice.is_tried && advice.count == 0 && !rest)
		return;
	print_lines(report, 0, 0, "%s", advice_intro(&advice));
	for (int i = 0; i < advice.count; i++)
		print_lines(report, 2, 4, "%s", proposal_sentence(report, &advice.list[i]));
	if (rest)
		print_lines(report, 0, 0, "%s", rest);
}
