#include "report/words/notice_words.h"

#define TO_FILL_IN "____________________"

/* What the head tells; NULL: nothing. */
static const char *told(const struct report *report, enum attribute a)
{
	const struct value *value = block_value(&report->plot->details.head, a);

	return value->set ? value->as.text : NULL;
}

const char *notice_words(const struct report *report)
{
	const char *number = told(report, HEAD_NOTICE), *end = told(report, HEAD_NOTICE_END);

	if (!number && !end && report->takeoff->services.count == 0)
		return "";
	return say(report, "%s, ends %s", number ? number : TO_FILL_IN, end ? end : TO_FILL_IN);
}

const char *notice_sentence(const struct report *report)
{
	const char *number = told(report, HEAD_NOTICE), *end = told(report, HEAD_NOTICE_END);

	if (!number && !end)
		return "";
	return say(report, "Notice of digging%s%s%s%s.", number ? " " : "", number ? number : "",
		end ? " ends " : "", end ? end : "");
}
