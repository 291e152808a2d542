#include "report/drawing/drawing.h"
#include "report/drawing/lines.h"
#include "report/drawing/point_numbers.h"
#include "report/drawing/service_signs.h"
#include "report/drawing/side_numbers.h"

void drawing_make(struct drawing *out, struct arena *arena, const struct takeoff *takeoff,
	const struct cuts *cuts, const struct setout *setout)
{
	const struct plot *plot = &takeoff->plot;
	struct points *points = &out->points;

	*points = (struct points){ .cuts = *cuts, .columns = cuts->columns * cuts->across + 1,
		.rows = cuts->rows * cuts->down + 1 };
	points->at = arena_new(arena, (size_t)points->columns * (size_t)points->rows, 1);
	lines_draw(points, plot);
	fence_lines_draw(&out->fences, points, plot, &takeoff->fences, arena);
	out->unnumbered = setout ? point_numbers_write(points, setout) : 0;
	ids_write(&out->ids, points, &takeoff->survey, arena);
	if (!setout)
		side_numbers_write(points, plot, &takeoff->survey, &takeoff->walls);
	fence_lines_number(points, plot, &takeoff->fences);
	if (!setout)
		service_signs_draw(points, takeoff);
	lines_fill(points, plot);
}

struct rectangle drawing_sheet(const struct drawing *drawing, struct place sheet)
{
	const struct cuts *cuts = &drawing->points.cuts;
	struct rectangle cells = cuts_cells(cuts, sheet);

	return (struct rectangle){ cells.left * cuts->across, cells.top * cuts->down,
		(cells.right + 1) * cuts->across, (cells.bottom + 1) * cuts->down };
}

/* The name that begins there; one does. */
static const char *name_at(const struct ids *ids, int column, int row)
{
	size_t low = 0, high = ids->name_count;

	while (high - low > 1) {
		size_t middle = low + (high - low) / 2;
		const struct drawn_name *name = &ids->names[middle];

		if (name->row < row || (name->row == row && name->column <= column))
			low = middle;
		else
			high = middle;
	}
	return ids->names[low].text;
}

void drawing_row(const struct drawing *drawing, int row, int left, int right, struct text *out)
{
	const struct points *points = &drawing->points;

	for (int column = left; column <= right; column++) {
		char c = points_at(points, column, row);
		bool is_empty = c == POINT_BLANK || c == POINT_GAP;

		if (c != POINT_NAME)
			text_add_bytes(out, is_empty ? " " : &c, 1);
		else if (points_at(points, column - 1, row) != POINT_NAME)
			text_add(out, name_at(&drawing->ids, column, row));
	}
}
