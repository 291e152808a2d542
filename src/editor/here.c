#include "editor/here.h"
#include "editor/here_around.h"
#include "editor/here_plants.h"
#include "report/words/page.h"
#include "report/words/figures.h"
#include "report/words/snag_words.h"
#include "report/words/sun_words.h"
#include "takeoff/sun/sun_usual.h"
#include "editor/marks.h"

#include <math.h>
#include <stdlib.h>

static void region_words(const struct report *report, int index, struct text *out)
{
	const struct region *region = &report->takeoff->survey.regions[index];
	const char *own = survey_own_name(&report->takeoff->survey, index);

	text_print(out, "%s %c %s\n%s%s%s, %s\n", plain_region(report, index),
		region->entry->letter, region->entry->name, own ? own : "", own ? "\n" : "",
		plain_cells(report, region->most.x - region->left + 1,
		region->most.y - region->first_cell.y + 1), word_area(report,
		survey_area(region->cells, plot_cell(report->plot))));
}

/* From the middle of the peg's cell to the middle of the cursor's. */
static void peg_words(const struct editor *editor, const struct report *report, struct text *out)
{
	nm cell = plot_cell(editor->plot);
	int across = abs(editor->cursor.x - editor->peg.x);
	int down = abs(editor->cursor.y - editor->peg.y);

	text_print(out, "From the peg %s across, %s down, %s straight\n",
		word_length(report, across * cell), word_length(report, down * cell),
		word_length(report, llround(hypot(across, down) * (double)cell)));
}

static void letter_list(const struct editor *editor, const struct mirror *mirror, struct text *out)
{
	const struct ground *ground = &editor->plot->ground;
	struct place images[IMAGES_MOST];
	int count = mirror_cells(mirror, editor->cursor.x, editor->cursor.y, images);

	text_print(out, "Fault, its images:");
	for (int i = 1; i < count; i++)
		if (ground_holds(ground, images[i].x, images[i].y))
			text_print(out, " %c", ground_cell(ground, images[i].x, images[i].y));
	text_add(out, "\n");
}

static void mark_words(const struct editor *editor, const struct report *report, struct text *out)
{
	struct mirror mirror = mirror_of(editor->plot);
	struct place at = editor->cursor;
	const struct snag *snag;
	size_t from = 0;

	if (mirror_is_broken(&mirror, &editor->plot->ground, at.x, at.y))
		letter_list(editor, &mirror, out);
	while ((snag = mark_snag(editor, at.x, at.y, &from)))
		text_print(out, "Snag: %s %s\n", snag_sentence(report, snag),
			snag_cure_sentence(report, snag));
}

/* "Fence left, below: Pickets", "Gate of 3 ft right: Pickets". */
static void fence_words(const struct report *report, struct place at, const struct fence *fence,
	struct text *out)
{
	struct legs legs = LEGS_EMPTY;
	struct text sides = TEXT_EMPTY;

	fence_legs(fence, &legs);
	here_sides(legs.items, legs.count, at, &sides);
	if (sides.length)
		text_print(out, "Fence %s: %s\n", sides.bytes, fence->name);
	for (size_t i = 0; i < fence->gates.count; i++) {
		text_clear(&sides);
		here_sides(&fence->gates.items[i], 1, at, &sides);
		if (sides.length)
			text_print(out, "Gate of %s %s: %s\n", tied(report, plain_sides(report,
				leg_length(fence->gates.items[i]))), sides.bytes, fence->name);
	}
	text_fini(&sides);
	legs_fini(&legs);
}

/* Most cells have none, and a plot may have very many legs: the map says whether to look. */
static void fences_words(const struct editor *editor, const struct report *report,
	struct text *out)
{
	struct place at = editor->cursor;
	int around = fence_map_at(&editor->fences, at.x, at.y) |
		(fence_map_at(&editor->fences, at.x - 1, at.y) & (FENCE_RIGHT | GATE_RIGHT)) |
		(fence_map_at(&editor->fences, at.x, at.y - 1) & (FENCE_BELOW | GATE_BELOW));

	for (size_t i = 0; around && i < editor->plot->details.fence_count; i++)
		fence_words(report, at, &editor->plot->details.fences[i], out);
}

/* What is known of the ground while it is not counted. */
static void letter_words(const struct editor *editor, const struct report *report,
	struct text *out)
{
	char letter = ground_cell(&editor->plot->ground, editor->cursor.x, editor->cursor.y);

	text_print(out, "%s\n%s", plain_letter(report, letter),
		letter == OPEN_GROUND ? "" : "counting ...\n");
}

static void ground_words(const struct editor *editor, const struct report *report,
	struct text *out)
{
	int region = editor->is_stale ? NO_REGION : survey_region_at(&editor->takeoff.survey,
		editor->cursor.x, editor->cursor.y);

	if (region == NO_REGION)
		letter_words(editor, report, out);
	else
		region_words(report, region, out);
}

/* While what is shown holds of the plot. */
static void sun_words(const struct editor *editor, const struct report *report, struct text *out)
{
	bool holds = !editor->is_stale && !editor->has_news;
	const uint16_t *sun = holds ? pages_sun(&editor->pages) : NULL;
	size_t columns = (size_t)editor->plot->ground.columns;
	double hours;

	if (!sun)
		return;
	sun += (size_t)editor->cursor.y * columns + (size_t)editor->cursor.x;
	hours = sun_usual_mean(*sun);
	if (*sun != SUN_NO_STEPS)
		text_print(out, "%s h of sun a day: %s\n", tied(report, sun_hours_words(report,
			hours)), word_label(&sun_class_words[sun_class_of(&editor->takeoff,
			hours)]));
}

void here_words(const struct editor *editor, struct text *out)
{
	struct arena arena = ARENA_EMPTY;
	struct report report = editor_report(editor, &arena);
	struct text words = TEXT_EMPTY;

	text_print(&words, "%s\n", plain_place(&report, editor->cursor));
	if (editor->is_pegged)
		peg_words(editor, &report, &words);
	ground_words(editor, &report, &words);
	here_plants_words(editor, &report, &words);
	fences_words(editor, &report, &words);
	here_around_words(editor, &report, &words);
	sun_words(editor, &report, &words);
	mark_words(editor, &report, &words);
	for (size_t i = 0; i < words.length; i++)
		if (words.bytes[i] == PAGE_TIE)
			text_add(out, "\302\240"); /* a no-break space */
		else
			text_add_bytes(out, &words.bytes[i], 1);
	text_fini(&words);
	arena_clear(&arena);
}
