#include "report/svg/beyond.h"
#include "base/stop.h"
#include "report/words/words.h"

const char *beyond_thing(const struct report *report, const struct obstacle *thing)
{
	return thing->height == 0 ? thing->name : say(report, "%s, %s high", thing->name,
		plain_length(report, thing->height));
}

/* How many cells lie between the plan's edges, cells from 0 on, and cells from..to; less than 0
 * where those come before the plan. */
static int gap(int from, int to, int cells)
{
	return to < 0 ? to + 1 : from >= cells ? from - cells : 0;
}

/* "3 ft right of the plan", "at the plan's right edge". */
static const char *way_words(const struct report *report, int cells, const char *way,
	const char *edge)
{
	return cells == 0 ? say(report, "at its %s edge", edge) : say(report, "%s %s it",
		plain_length(report, cells * report->takeoff->survey.cell), way);
}

/* "3 ft right of it, 2 ft above it"; NULL where some of it is over the plan. */
static const char *place_words(const struct report *report, const struct rectangle *r)
{
	const struct survey *survey = &report->takeoff->survey;
	int across = gap(r->left, r->right, survey->columns);
	int down = gap(r->top, r->bottom, survey->rows);
	bool is_left = r->right < 0, is_right = r->left >= survey->columns;
	bool is_above = r->bottom < 0, is_below = r->top >= survey->rows;
	const char *beside = is_left ? way_words(report, -across, "left of", "left") :
		is_right ? way_words(report, across, "right of", "right") : NULL;
	const char *beyond = is_above ? way_words(report, -down, "above", "upper") :
		is_below ? way_words(report, down, "below", "lower") : NULL;

	return beside && beyond ? say(report, "%s, %s", beside, beyond) :
		beside ? beside : beyond;
}

static void add(struct remark_list *list, const struct report *report,
	const struct obstacles *things)
{
	for (size_t i = 0; i < things->count && !stop_asked(); i++) {
		const struct obstacle *thing = &things->items[i];
		const char *place = place_words(report, &thing->cells);

		if (place && thing->height > 0)
			remark_paragraph(list, say(report, "Shades the plan: %s, %s.",
				beyond_thing(report, thing), place));
	}
}

void beyond_add(struct remark_list *list, const struct report *report)
{
	add(list, report, &report->plot->details.around.houses);
	add(list, report, &report->plot->details.around.shades);
}
