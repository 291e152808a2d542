#include "takeoff/common/areas.h"
#include "base/stop.h"
#include "survey/surface.h"

#include <limits.h>

static const struct figure figures[] = {
	{ NULL, "", NULL, FIELD(LETTER, area_row, letter) },
	{ "class", "Ground", NULL, FIELD(TEXT, area_row, class) },
	{ "letter", NULL, NULL, FIELD(LETTER, area_row, letter), .flags = ROW_KEY },
	{ "name", NULL, NULL, FIELD(TEXT, area_row, name) },
	{ NULL, "Name", NULL, FIELD(TEXT, area_row, remark), .flags = TEXT_WRAPS },
	{ "cells", "Cells", NULL, FIELD(COUNT, area_row, cells) },
	{ "area_m2", "Area", NULL, FIELD(AREA, area_row, area) },
};
const struct figure_table area_table = FIGURE_TABLE(area_row, figures);

void areas_count(struct areas *out, const struct basis *basis)
{
	const struct survey *survey = basis->survey;
	const struct details *details = &basis->plot->details;
	const struct surface surface = surface_of(basis->plot);
	int64_t cells[UCHAR_MAX + 1] = { 0 };
	size_t count = details->legend_count + 1;
	struct area_row *areas = arena_new(basis->arena, count, sizeof *areas);

	for (size_t i = 0; i < survey->row_runs[survey->rows] && !stop_asked(); i++) {
		const struct run *run = &survey->runs[i];

		cells[(unsigned char)run->letter] += run->right - run->left;
	}
	for (size_t i = 0; i < count; i++) {
		const struct entry *entry = i < details->legend_count ? &details->legend[i] : NULL;

		areas[i] = entry ? (struct area_row){ .entry = entry, .class =
			class_word(entry->class),
			.letter = entry->letter, .name = entry->name, .remark = entry->name } :
			(struct area_row){ .class = class_word(CLASS_OPEN), .letter = OPEN_GROUND,
				.name = "Open ground", .remark = surface_is_graded(&surface) ?
				"Open ground, graded" : "Open ground, left as it is" };
		areas[i].cells = cells[(unsigned char)areas[i].letter];
		areas[i].area = survey_area(areas[i].cells, survey->cell);
	}
	*out = (struct areas){ areas, (int)count };
}
