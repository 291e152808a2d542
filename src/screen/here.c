#include "screen/here.h"
#include "base/show.h"
#include "screen/marks.h"

#include <math.h>
#include <stdlib.h>

/* Adds a figure that a line may end behind but not within. */
static void add_held(struct text *out, struct text *figure)
{
	for (size_t i = 0; i < figure->length; i++)
		if (figure->bytes[i] == ' ')
			text_add(out, "\302\240"); /* a no-break space */
		else
			text_add_bytes(out, &figure->bytes[i], 1);
	text_clear(figure);
}

static void region_words(const struct editor *editor, int index, struct text *out)
{
	const struct region *region = &editor->takeoff.survey.regions[index];
	struct text area = TEXT_EMPTY;
	char name[REGION_NAME_MOST];

	survey_region_name(region, name);
	text_print(out, "%s %c %s\n", name, region->entry->letter, region->entry->name);
	editor_name_size(editor, region->most.x - region->left + 1,
		region->most.y - region->first_cell.y + 1, out);
	text_add(out, ", ");
	show_area(&area, survey_area(region->cells, plot_cell(&editor->plot)),
		plot_units(&editor->plot));
	add_held(out, &area);
	text_fini(&area);
	text_add(out, "\n");
}

/* From the middle of the peg's cell to the middle of the cursor's. */
static void peg_words(const struct editor *editor, struct text *out)
{
	nm cell = plot_cell(&editor->plot);
	enum units units = plot_units(&editor->plot);
	int across = abs(editor->cursor.x - editor->peg.x), down = abs(editor->cursor.y - editor->peg.y);
	struct text length = TEXT_EMPTY;

	text_add(out, "From the peg ");
	show_length(&length, across * cell, units);
	add_held(out, &length);
	text_add(out, " across, ");
	show_length(&length, down * cell, units);
	add_held(out, &length);
	text_add(out, " down, ");
	show_length(&length, llround(hypot(across, down) * (double)cell), units);
	add_held(out, &length);
	text_add(out, " straight\n");
	text_fini(&length);
}

static void letter_list(const struct editor *editor, const struct mirror *mirror, struct text *out)
{
	const struct ground *ground = &editor->plot.ground;
	struct place images[IMAGES_MOST];
	int count = mirror_cells(mirror, editor->cursor.x, editor->cursor.y, images);

	text_print(out, "/ its images:");
	for (int i = 1; i < count; i++)
		if (ground_holds(ground, images[i].x, images[i].y))
			text_print(out, " %c", ground_cell(ground, images[i].x, images[i].y));
	text_add(out, "\n");
}

static void mark_words(const struct editor *editor, struct text *out)
{
	struct mirror mirror = mirror_of(&editor->plot);
	struct place at = editor->cursor;
	const struct snag *snag;
	int from = 0;

	if (mirror_is_broken(&mirror, &editor->plot.ground, at.x, at.y))
		letter_list(editor, &mirror, out);
	while ((snag = mark_snag(&editor->takeoff, at.x, at.y, &from)))
		text_print(out, "! %s\n", snag->text);
}

void here_words(const struct editor *editor, struct text *out)
{
	int region = survey_region_at(&editor->takeoff.survey, editor->cursor.x, editor->cursor.y);

	editor_name_place(editor, editor->cursor, out);
	text_add(out, "\n");
	if (editor->is_pegged)
		peg_words(editor, out);
	if (region == NO_REGION)
		text_add(out, ". open ground\n");
	else
		region_words(editor, region, out);
	mark_words(editor, out);
}
