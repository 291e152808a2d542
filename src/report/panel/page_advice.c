#include "report/panel/page_advice.h"
#include "report/words/advice_words.h"

void page_advice(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct report *report = &maker->report;
	struct advice advice;
	const char *rest;

	if (!advice_has_subject(takeoff)) {
		page_note_line(maker, "No raised beds and no fence yet.");
		return;
	}
	advice_make(&advice, report->plot, takeoff);
	rest = advice_rest(&advice);
	page_note_line(maker, advice_intro(&advice));
	for (int i = 0; i < advice.count; i++)
		page_note_at(maker, untied(report, proposal_sentence(report, &advice.list[i])),
			proposal_place(report, &advice.list[i]));
	if (rest)
		page_note_line(maker, rest);
}
