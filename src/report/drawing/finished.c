#include "report/drawing/finished.h"
#include "report/drawing/scale.h"
#include "survey/surface.h"

static const char *percent_words(const struct report *report, int64_t millionths)
{
	struct text words = TEXT_EMPTY;

	text_add_decimal(&words, millionths, 6);
	text_add(&words, " %");
	return tied(report, say_text(report, &words));
}

/* "falls 5 % away from the house, from". */
static const char *fall_words_of(const struct report *report, const struct finish *finish)
{
	int64_t north = block_number(&report->plot->details.head, HEAD_NORTH);
	struct text degrees = TEXT_EMPTY, way = TEXT_EMPTY;

	if (!finish->has_fall)
		return "is level,";
	if (finish->is_away && report->plot->details.around.houses.count == 0)
		return "is level, since no house is told that it could fall away from,";
	if (finish->is_away)
		return say(report, "falls %s away from the house, from",
			percent_words(report, finish->percent));
	text_add_decimal(&degrees, finish->bearing, 6);
	scale_way_words(&way, north, finish->bearing);
	return say(report, "falls %s towards %s degrees from true north, %s on the plan, from",
		percent_words(report, finish->percent), say_text(report, &degrees),
		say_text(report, &way));
}

/* Where it starts. */
static const char *start_words(const struct report *report, const struct finish *finish)
{
	if (finish->has_level)
		return say(report, "%s below the string at %s",
			word_inches(report, finish->drop), plain_place(report, finish->at));
	return finish->is_away ? "the ground as it is at the house" :
		"the ground as it is at the datum";
}

const char *finished_words(const struct report *report)
{
	const struct finish *finish = &report->plot->details.finish;

	if (!surface_of(report->plot).has_finish)
		return NULL;
	return say(report, "The finished ground %s %s.", fall_words_of(report, finish),
		start_words(report, finish));
}
