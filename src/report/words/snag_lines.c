#include "report/words/snag_lines.h"
#include "base/stop.h"
#include "report/words/words.h"

#include <string.h>

static const struct entry *entry_of(const struct report *report, const struct snag *snag)
{
	return snag->region == NO_REGION ? NULL :
		report->takeoff->survey.regions[snag->region].entry;
}

bool snag_has_same_card(const struct report *report, const struct snag *a, const struct snag *b)
{
	return a->fence == b->fence && entry_of(report, a) == entry_of(report, b);
}

static bool is_alike(const struct report *report, const struct snag_line *a,
	const struct snag_line *b)
{
	return snag_is_alike(a->snag, b->snag) && snag_has_same_card(report, a->snag, b->snag);
}

/* The line that a snag belongs to, an image of its first; NULL: none. A broken mirror is one snag
 * for all images as it is. */
static struct snag_line *line_of(struct snag_lines *lines, const struct report *report,
	const struct snag_line *line)
{
	for (int i = 0; i < lines->count && line->snag->code != SNAG_MIRROR_BROKEN; i++) {
		struct snag_line *other = &lines->list[i];

		if (snag_box_equal(&line->orbit, &other->orbit) &&
			!snag_box_equal(&line->snag->box, &other->snag->box) &&
			is_alike(report, line, other))
			return other;
	}
	return NULL;
}

/* Brings lines with one sentence and one cure together, by the first of them. */
static void gather(struct snag_lines *lines, const struct report *report)
{
	for (int i = 1; i < lines->count; i++) {
		struct snag_line line = lines->list[i];
		int to = i;

		for (int j = 0; j < i && to == i; j++) {
			bool is_last = j + 1 == i || !is_alike(report, &lines->list[j + 1], &line);

			if (is_alike(report, &lines->list[j], &line) && is_last)
				to = j + 1;
		}
		memmove(&lines->list[to + 1], &lines->list[to], (size_t)(i - to) * sizeof line);
		lines->list[to] = line;
	}
}

void snag_lines_find(struct snag_lines *out, const struct report *report, const struct snag *snags,
	size_t count)
{
	struct mirror mirror = mirror_of(report->plot);

	out->count = 0;
	out->more = 0;
	for (size_t i = 0; i < count && !stop_asked(); i++) {
		const struct snag_line new = { &snags[i], 0,
			snag_first_image(&mirror, &snags[i]) };
		struct snag_line *line = line_of(out, report, &new);

		if (line)
			line->images++;
		else if (out->count < SNAG_LINES_MOST)
			out->list[out->count++] = new;
		else
			out->more++;
	}
	gather(out, report);
}

const char *snag_images_words(const struct report *report, const struct snag_line *line)
{
	return line->images == 0 ? "" : say(report, " and %s %s",
		plain_count(report, line->images), line->images == 1 ? "image" : "images");
}
