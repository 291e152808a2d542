#include "report/words/phrases.h"

bool phrase_holds(const struct report *report, const struct phrase *phrase)
{
	uint64_t facts = report->takeoff->work.facts;

	return (facts & phrase->all) == phrase->all && (facts & phrase->none) == 0 &&
		(phrase->any == 0 || (facts & phrase->any) != 0);
}

const char *phrase_words(const struct report *report, const struct phrase *phrase)
{
	return report->units == UNITS_METRIC && phrase->metric ? phrase->metric : phrase->words;
}
