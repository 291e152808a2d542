#include "support/beds.h"

#include "support/plots.h"
#include "takeoff/walls/cutting.h"
#include "takeoff/common/snags.h"
#include "takeoff/walls/wall.h"

#include <stdlib.h>
#include <string.h>

enum { STRIPS_MOST = 6 };

void beds_lay(struct beds *beds)
{
	struct takeoff *takeoff = &beds->takeoff;
	const struct basis basis = { .arena = &beds->arena, .plot = &beds->plot,
		.survey = &takeoff->survey, .allow = &beds->plot.details.allow,
		.snags = &takeoff->snags };

	beds->arena = ARENA_EMPTY;
	*takeoff = (struct takeoff){ .allow = basis.allow,
		.snags = { .arena = &beds->arena, .survey = &takeoff->survey } };
	survey_plot(&takeoff->survey, &beds->arena, &beds->plot);
	walls_lay(&takeoff->walls, &basis);
	cutting_plan(&takeoff->cuttings, &basis, &takeoff->walls);
	snag_sort(&takeoff->snags);
}

void beds_fini(struct beds *beds)
{
	arena_clear(&beds->arena);
	plot_fini(&beds->plot);
}

static void set_all(struct plot *plot, enum attribute attribute, struct value value)
{
	for (size_t i = 0; i < plot->details.legend_count; i++)
		if (plot->details.legend[i].class == CLASS_BED)
			block_set(&plot->details.legend[i].block, attribute, value);
}

void beds_set_block(struct plot *plot, nm along, nm across, nm up)
{
	set_all(plot, BED_BLOCK, (struct value){ .set = true, .as.size = { along, across, up } });
}

void beds_set_courses(struct plot *plot, int courses)
{
	set_all(plot, BED_COURSES, (struct value){ .set = true, .as.number = courses });
}

void beds_set_cell(struct plot *plot, nm cell)
{
	block_set(&plot->details.head, HEAD_CELL, (struct value){ .set = true, .as.length = cell });
}

struct size beds_random_block(struct random *random)
{
	/* Inches; common sizes of block and brick, no published source. */
	static const int usual[][3] = { { 16, 8, 6 }, { 16, 8, 8 }, { 12, 4, 4 }, { 16, 6, 4 },
		{ 8, 4, 3 }, { 12, 8, 4 }, { 18, 6, 6 }, { 24, 8, 8 }, { 16, 4, 8 }, { 11, 7, 4 } };
	const int *inches = usual[random_below(random, 10)];
	nm along, across;

	switch (random_below(random, 3)) {
	case 0:
		return (struct size){ inches[0] * NM_PER_INCH, inches[1] * NM_PER_INCH,
			inches[2] * NM_PER_INCH };
	case 1:
		along = random_between(random, 96, 400) * NM_PER_INCH / 16;
		break;
	default:
		along = random_between(random, 150, 600) * NM_PER_MM;
	}
	across = along * random_between(random, 25, 100) / 100;
	return (struct size){ along, across, across };
}

/* Cuts a length into strips of least..2 least + 6 cells; returns where each starts, and the end. */
static int random_strips(struct random *random, int least, int most, int starts[STRIPS_MOST + 1])
{
	int count = random_between(random, 1, most);

	starts[0] = 0;
	for (int i = 0; i < count; i++)
		starts[i + 1] = starts[i] + random_between(random, least, 2 * least + 6);
	return count;
}

static void fill(struct ground *ground, struct place from, struct place to, char letter)
{
	for (int y = from.y; y < to.y; y++)
		memset(ground->cells + (size_t)y * (size_t)ground->columns + from.x, letter,
			(size_t)(to.x - from.x));
}

static void start(struct plot *plot, int columns, int rows)
{
	plot_from_rows(plot, (const char *const[]){ "b", NULL });
	ground_fini(&plot->ground);
	ground_init(&plot->ground, columns, rows);
}

void beds_rectangle(struct plot *plot, int columns, int rows)
{
	start(plot, columns, rows);
	fill(&plot->ground, (struct place){ 0, 0 }, (struct place){ columns, rows }, 'b');
}

void beds_at_random(struct plot *plot, struct random *random, int least, int most)
{
	int across[STRIPS_MOST + 1], down[STRIPS_MOST + 1];
	int columns = random_strips(random, least, most, across);
	int rows = random_strips(random, least, most, down);

	start(plot, across[columns], down[rows]);
	for (int j = 0; j < rows; j++)
		for (int i = 0; i < columns; i++)
			if (random_below(random, 4) > 0)
				fill(&plot->ground, (struct place){ across[i], down[j] },
					(struct place){ across[i + 1], down[j + 1] }, 'b');
}

/* One quarter of a garden, from its outer corner to its inner one, all sides multiples of a
 * step. */
static void draw_quarter(struct ground *ground, struct random *random, struct place inner, int step)
{
	int arm_x = step * random_between(random, 1, inner.x / step / 3);
	int arm_y = step * random_between(random, 1, inner.y / step / 3);
	struct place corner = { inner.x - arm_x, inner.y - arm_y };

	fill(ground, (struct place){ 0, 0 }, inner, 'b');
	switch (random_below(random, 5)) {
	case 0: /* a rectangle */
		break;
	case 1: /* an ell round the middle's circle */
		fill(ground, corner, inner, OPEN_GROUND);
		break;
	case 2: /* two, with a path between them */
		fill(ground, (struct place){ arm_x, 0 }, (struct place){ arm_x + step, inner.y },
			OPEN_GROUND);
		break;
	case 3: /* a frame */
		fill(ground, (struct place){ arm_x, arm_y }, corner, OPEN_GROUND);
		break;
	default: /* a tee */
		fill(ground, (struct place){ 0, corner.y }, (struct place){ arm_x, inner.y },
			OPEN_GROUND);
		fill(ground, corner, inner, OPEN_GROUND);
	}
}

void beds_formal(struct plot *plot, struct random *random, int step)
{
	struct place inner = { step * random_between(random, 4, 9),
		step * random_between(random, 4, 9) };
	int columns = 2 * inner.x + step, rows = 2 * inner.y + step;
	struct ground *ground = &plot->ground;

	start(plot, columns, rows);
	draw_quarter(ground, random, inner, step);
	for (int y = 0; y < inner.y; y++) {
		for (int x = 0; x < inner.x; x++) {
			char letter = ground_cell(ground, x, y);
			int right = columns - 1 - x, bottom = rows - 1 - y;

			ground->cells[y * columns + right] = letter;
			ground->cells[bottom * columns + x] = letter;
			ground->cells[bottom * columns + right] = letter;
		}
	}
}

GEOSGeometry *beds_shape(GEOSContextHandle_t geos, const struct survey *survey, int region)
{
	struct geos_box *boxes = calloc((size_t)survey->regions[region].cells, sizeof *boxes);
	double cell = (double)survey->cell / (double)NM_PER_M;
	size_t count = 0;
	GEOSGeometry *shape;

	for (int y = 0; y < survey->rows; y++)
		for (int x = 0; x < survey->columns; x++)
			if (survey_region_at(survey, x, y) == region)
				boxes[count++] = (struct geos_box){ x * cell, y * cell,
					(x + 1) * cell, (y + 1) * cell };
	shape = geos_union(geos, boxes, count);
	free(boxes);
	return shape;
}

int beds_snags(const struct beds *beds, enum snag_code code)
{
	int count = 0;

	for (int i = 0; i < (int)beds->takeoff.snags.count; i++)
		count += beds->takeoff.snags.list[i].code == code;
	return count;
}
