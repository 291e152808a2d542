#include "report/text/print.h"
#include "base/stop.h"
#include "report/drawing/fence_lines.h"

/* ---- The table ------------------------------------------------------------------------------- */

/* The table of legs and gates with the posts on each. */
struct standing {
	struct table table; /* first */
	const struct report *report;
	int fence;                       /* which of them all */
	const struct fence_level *first; /* the fence's own */
	int count;
	int level, post;                 /* the next ones */
};

/* "3", "G1": as in the setting out. */
static const char *part_name(const struct report *report, int fence,
	const struct fence_level *level)
{
	char name[FENCE_NAME_MOST];

	if (level->part == FENCE_PART_LEG)
		return plain_count(report, level->number);
	fence_gate_name(fence, level->number - 1, name);
	return say(report, "%s", name);
}

static const char *post_name(const struct report *report, int fence, int post)
{
	char name[FENCE_NAME_MOST];

	fence_post_name(fence, post - 1, name);
	return say(report, "%s", name);
}

static bool next_post(struct table *table, const char *cells[])
{
	struct standing *standing = (struct standing *)table;
	const struct report *report = standing->report;
	const struct fence_level *level = &standing->first[standing->level];
	const struct fence_level_post *post;
	bool is_first = standing->post == 0;

	arena_clear(report->words);
	if (standing->level == standing->count || stop_asked()) {
		standing->level = 0;
		return false;
	}
	post = &level->posts[standing->post];
	cells[0] = is_first ? part_name(report, standing->fence, level) : "";
	cells[1] = is_first ? plain_inches(report, level->bottom) : "";
	cells[2] = post_name(report, standing->fence, post->post);
	cells[3] = plain_inches(report, post->ground);
	cells[4] = plain_inches(report, post->gap);
	cells[5] = plain_inches(report, post->height);
	if (++standing->post == level->post_count) {
		standing->post = 0;
		standing->level++;
	}
	return true;
}

/* ---- What is to be filled -------------------------------------------------------------------- */

/* "leg 1 up to 6 in, gate G1 up to 5 in and 3 more". */
static const char *wide_words(const struct report *report, int fence,
	const struct fence_level *levels, int count)
{
	struct text words = TEXT_EMPTY;
	int wide = 0;

	for (int i = 0; i < count && !stop_asked(); i++) {
		if (!levels[i].is_wide || ++wide > NAMED_MOST)
			continue;
		text_print(&words, "%s%s%c%s up to %s", wide > 1 ? ", " : "",
			fence_part_words[levels[i].part].key, PAGE_TIE,
			part_name(report, fence, &levels[i]),
			word_inches(report, levels[i].widest));
	}
	if (wide > NAMED_MOST)
		text_print(&words, " and %s more", plain_count(report, wide - NAMED_MOST));
	return say_text(report, &words);
}

static void print_wide(const struct report *report, int fence, const struct fence_level *levels,
	int count)
{
	const char *wide = wide_words(report, fence, levels, count);

	if (*wide)
		print_lines(report, 2, 2, "Gaps over %s, to fill up, or to step the panels: %s.",
			word_inches(report, report->takeoff->fences.levels.widest_allowed), wide);
	arena_clear(report->words);
}

void print_fence_levels(const struct report *report, int fence)
{
	static const struct table_column columns[] = {
		{ "Leg", COLUMN_LEFT }, { "Bottom", COLUMN_RIGHT }, { "Post", COLUMN_RIGHT },
		{ "Ground", COLUMN_RIGHT }, { "Gap", COLUMN_RIGHT }, { "Height", COLUMN_RIGHT },
	};
	const struct fences *fences = &report->takeoff->fences;
	const struct fencing *fencing = &fences->list[fence];
	struct standing standing = { .table = { columns, 6, 2, next_post, 0 }, .report = report,
		.fence = fence, .count = fencing->level_count };

	if (fencing->level_count == 0)
		return;
	standing.first = &fences->levels.list[fencing->first_level];
	print_lines(report, 2, 2, "Panels hang level, leg by leg: bottom of the panels and ground "
		"at each post as a staff reads them, down from the level string line (with a "
		"minus, up from it); gap below the panels; top of the panels over the ground.");
	table_print(&standing.table, report->out);
	print_wide(report, fence, standing.first, standing.count);
	print_blank(report);
}
